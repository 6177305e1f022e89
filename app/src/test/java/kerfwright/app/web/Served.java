package kerfwright.app.web;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kerfwright.app.Wiring;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.input.BadInput;
import kerfwright.app.network.Network;
import kerfwright.app.security.Doors;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.ServerConnector;
import org.jspecify.annotations.Nullable;

/**
 * The whole application on a free port, with the demo practice unless an empty one is asked for.
 */
final class Served implements AutoCloseable {
  private WebServer web;
  private Javalin server;
  private int port;
  private final boolean demo;
  private final Doors doors;
  private final @Nullable String code;
  private final @Nullable Network network;
  private final OpenPractice drawer;
  private final HttpClient client = HttpClient.newHttpClient();

  Served() throws BadInput {
    this(true);
  }

  private Served(boolean demo) throws BadInput {
    this(demo, Doors.open(), null);
  }

  /** With the doors of a practice that is no demo. */
  Served(boolean demo, Doors doors, @Nullable String code) throws BadInput {
    this(demo, doors, code, null);
  }

  private Served(boolean demo, Doors doors, @Nullable String code, @Nullable Network network)
      throws BadInput {
    this.network = network;
    this.demo = demo;
    this.doors = doors;
    this.code = code;
    drawer = OpenPractice.of(new ServeOptions(demo, 0, null));
    start(Port.free());
  }

  /** The invented practice on a network, on loopback's ports: people sign in. */
  static Served onNetwork(Network network) throws BadInput {
    Doors doors = Doors.reached(Doors.Kind.NETWORK, network.names());
    return new Served(true, doors, "ABCD-EFGH-JKLM", network);
  }

  /** A practice that starts for the first time: nothing set, nothing in the drawer. */
  static Served empty() throws BadInput {
    return new Served(false);
  }

  private void start(int wanted) throws BadInput {
    port = wanted;
    Wiring wiring = Wiring.production();
    Entrance entrance = new Entrance(doors, wanted, code, network);
    web =
        new WebServer(wiring, drawer, demo ? wiring.demoCases().read() : List.of(), demo, entrance);
    server = web.create(drawer, entrance);
    server.start();
  }

  Javalin server() {
    return server;
  }

  /** Addresses of all its pages. */
  List<String> pages() {
    return web.pages();
  }

  /** Stops answering, as when the machine of the practice is out of reach. */
  void lose() {
    server.stop();
  }

  /** Answers again, at the same address and with the same practice. */
  void regain() throws BadInput {
    start(port);
  }

  /** What is kept behind the pages. */
  OpenPractice practice() {
    return drawer;
  }

  String address(String path) {
    return (network == null ? "http" : "https") + "://localhost:" + port(0) + path;
  }

  /** Where devices are made to trust the authority. */
  String plainAddress() {
    return "http://localhost:" + port(1);
  }

  private int port(int connector) {
    Connector[] all = server.jettyServer().server().getConnectors();
    return ((ServerConnector) all[connector]).getLocalPort();
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(HttpRequest.newBuilder(URI.create(address(path))).build());
  }

  HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    return client.send(request, HttpResponse.BodyHandlers.ofString());
  }

  /** Sends a form: names and values in turn. */
  HttpResponse<String> post(String path, String... fields)
      throws IOException, InterruptedException {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(fields[i]).append('=');
      body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return send(
        HttpRequest.newBuilder(URI.create(address(path)))
            .header("Origin", address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
            .build());
  }

  @Override
  public void close() {
    server.stop();
    drawer.close();
  }
}
