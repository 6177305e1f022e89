package kerfwright.app.network;

import java.io.IOException;
import java.nio.file.Path;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import kerfwright.app.input.BadFile;
import kerfwright.app.input.BadInput;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** How the practice's network reaches the server: over TLS 1.2 or 1.3, with a certificate. */
public final class Network implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Network.class);

  private final Source source;
  private final OwnNames names;
  private final String best;
  private final SslContextFactory.Server tls = new SslContextFactory.Server();
  private final ScheduledExecutorService renewing =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "certificate");
            thread.setDaemon(true);
            return thread;
          });
  private final @Nullable X509Certificate authority;

  /** Where certificates come from, each time they are looked at. */
  @FunctionalInterface
  private interface Source {
    Certificates read() throws IOException;
  }

  private Network(Source source, OwnNames names, String best) throws IOException {
    this.source = source;
    this.names = names;
    this.best = best;
    Certificates now = source.read();
    this.authority = now.authority();
    tls.setKeyStore(now.store());
    tls.setKeyStorePassword("");
    tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
    renewing.scheduleAtFixedRate(this::renew, 1, 1, TimeUnit.DAYS);
  }

  /** With the practice's own authority, kept in a folder. */
  public static Network ofOwnAuthority(Path folder, List<String> given, Clock clock)
      throws BadInput {
    OwnNames names = OwnNames.of(given);
    LocalAuthority authority = new LocalAuthority(folder, clock);
    try {
      return new Network(() -> authority.of(names), names, names.best(given));
    } catch (IOException unusable) {
      throw new BadInput("--lan", BadFile.why(unusable));
    }
  }

  /** With a certificate from elsewhere; a changed file is taken within a day. */
  public static Network ofFiles(Path certificate, Path key, List<String> given) throws BadInput {
    OwnNames names = OwnNames.of(given);
    try {
      return new Network(() -> Certificates.given(certificate, key), names, names.best(given));
    } catch (IOException | RuntimeException unusable) {
      throw new BadInput("--certificate", BadFile.why(unusable));
    }
  }

  private void renew() {
    try {
      Certificates now = source.read();
      tls.reload(factory -> factory.setKeyStore(now.store()));
    } catch (Exception stays) {
      LOG.warn(
          "The certificate could not be renewed; the one there is stays: {}", stays.toString());
    }
  }

  public Set<String> names() {
    return names.all();
  }

  /** The name a tablet is led to. */
  public String best() {
    return best;
  }

  /** Of the practice's own authority; empty where the certificate was given. */
  public Optional<String> fingerprint() {
    return Optional.ofNullable(authority).map(Certificates::fingerprint);
  }

  /** The certificate of the own authority, DER, as devices take it. */
  byte[] authority() {
    try {
      return authority == null ? new byte[0] : authority.getEncoded();
    } catch (java.security.cert.CertificateEncodingException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  /** Listens with TLS. */
  public Connector secure(Server server, HttpConfiguration http, int port) {
    HttpConfiguration over = new HttpConfiguration(http);
    // names are checked by the gate, for addresses too
    over.addCustomizer(new SecureRequestCustomizer(false));
    ServerConnector connector =
        new ServerConnector(
            server,
            new SslConnectionFactory(tls, HttpVersion.HTTP_1_1.asString()),
            new HttpConnectionFactory(over));
    connector.setPort(port);
    return connector;
  }

  /** Listens without: for the page that makes a device trust the authority, and nothing else. */
  public static Connector plain(Server server, HttpConfiguration http, int port) {
    ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
    connector.setPort(port);
    return connector;
  }

  @Override
  public void close() {
    renewing.shutdownNow();
  }
}
