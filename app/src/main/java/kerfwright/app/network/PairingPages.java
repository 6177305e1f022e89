package kerfwright.app.network;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.label.QrDrawing;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import org.jspecify.annotations.Nullable;

/** Makes a device trust the practice's authority; holds nothing of the practice. */
public final class PairingPages implements Feature {
  private final @Nullable Network network;
  private final int port;
  private final int plainPort;
  private final Templates templates;

  /**
   * @param network null where the practice is not on one
   */
  public PairingPages(@Nullable Network network, int port, int plainPort, Templates templates) {
    this.network = network;
    this.port = port;
    this.plainPort = plainPort;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/pair", this::show, Access.OPEN);
    config.routes.get("/pair/authority.crt", this::authority, Access.OPEN);
  }

  private Network known() {
    if (network == null || network.fingerprint().isEmpty()) {
      throw new NotFoundResponse();
    }
    return network;
  }

  private void show(Context call) {
    Network here = known();
    boolean plain = call.scheme().equals("http");
    String pairing = "http://" + here.best() + ":" + plainPort + "/pair";
    Map<String, Object> values = new HashMap<>();
    values.put("plain", plain);
    values.put("pairing", pairing);
    values.put("qr", plain ? "" : QrDrawing.of(pairing, pairing));
    values.put("fingerprint", here.fingerprint().orElse(""));
    values.put("address", "https://" + here.best() + ":" + port + "/");
    templates.html(call, "network/pair.jte", values);
  }

  private void authority(Context call) {
    call.header("Content-Disposition", "attachment; filename=\"kerfwright-authority.crt\"");
    call.contentType("application/x-x509-ca-cert").result(known().authority());
  }
}
