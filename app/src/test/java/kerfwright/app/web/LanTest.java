package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import kerfwright.app.network.Network;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the practice's network: TLS by the own authority, and nothing without it. */
class LanTest {
  @TempDir private Path folder;
  private Network network;
  private Served app;

  @BeforeEach
  void start() throws Exception {
    network = Network.ofOwnAuthority(folder, List.of("practice.local"), Clock.systemUTC());
    app = Served.onNetwork(network);
  }

  @AfterEach
  void stop() {
    app.close();
    network.close();
  }

  private static X509Certificate certificate(Path file) throws Exception {
    try (InputStream in = Files.newInputStream(file)) {
      return (X509Certificate) CertificateFactory.getInstance("X.509").generateCertificate(in);
    }
  }

  private HttpClient trusting(Path authority) throws Exception {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, null);
    store.setCertificateEntry("practice", certificate(authority));
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(store);
    SSLContext tls = SSLContext.getInstance("TLS");
    tls.init(null, trust.getTrustManagers(), null);
    return HttpClient.newBuilder().sslContext(tls).build();
  }

  private HttpResponse<String> get(HttpClient client, String address)
      throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void whoeverTrustsTheAuthorityReachesTheSignIn() throws Exception {
    HttpClient client = trusting(folder.resolve("authority.crt"));
    HttpResponse<String> first = get(client, app.address("/drawer"));
    assertEquals(303, first.statusCode());
    assertTrue(first.headers().firstValue("Strict-Transport-Security").isPresent());
    HttpClient stranger = HttpClient.newHttpClient();
    assertThrows(SSLHandshakeException.class, () -> get(stranger, app.address("/drawer")));
  }

  @Test
  void cookiesAreOfThisServerAndOfTlsAlone() throws Exception {
    HttpClient client = trusting(folder.resolve("authority.crt"));
    HttpResponse<String> made =
        client.send(
            HttpRequest.newBuilder(URI.create(app.address("/first")))
                .header("Origin", app.address(""))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "code=ABCD-EFGH-JKLM&initials=OW&password=velvet+anvil+under+seven+lamps"))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    String cookie = made.headers().firstValue("Set-Cookie").orElse("");
    assertTrue(cookie.startsWith("__Host-kerfwright="), cookie);
    assertTrue(cookie.contains("Secure") && cookie.contains("HttpOnly"), cookie);
    assertTrue(cookie.contains("SameSite=Strict"), cookie);
  }

  @Test
  void withoutTlsThereIsThePairingPageAlone() throws Exception {
    HttpClient client = HttpClient.newHttpClient();
    String plain = app.plainAddress();
    HttpResponse<String> page = get(client, plain + "/pair");
    assertEquals(200, page.statusCode());
    String read = page.body().replace("<wbr>", "");
    assertTrue(read.contains(network.fingerprint().orElseThrow()), read);
    assertFalse(page.headers().firstValue("Strict-Transport-Security").isPresent());
    for (String path : List.of("/", "/sign-in", "/first", "/drawer", "/enter/x", "/api/plan")) {
      assertEquals(403, get(client, plain + path).statusCode(), path);
    }
    HttpResponse<byte[]> handed =
        client.send(
            HttpRequest.newBuilder(URI.create(plain + "/pair/authority.crt")).build(),
            HttpResponse.BodyHandlers.ofByteArray());
    assertEquals(
        certificate(folder.resolve("authority.crt")),
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new java.io.ByteArrayInputStream(handed.body())));
  }

  @Test
  void theAuthorityVouchesForLocalNamesAlone() throws Exception {
    X509Certificate authority = certificate(folder.resolve("authority.crt"));
    assertEquals(0, authority.getBasicConstraints());
    assertTrue(authority.getCriticalExtensionOIDs().contains("2.5.29.30"), "name constraints");
    certificate(folder.resolve("server.crt")).verify(authority.getPublicKey());
  }

  @Test
  void theServersCertificateIsRenewedInTimeAndTheAuthorityStays() throws Exception {
    X509Certificate authority = certificate(folder.resolve("authority.crt"));
    X509Certificate before = certificate(folder.resolve("server.crt"));
    Network.ofOwnAuthority(folder, List.of("practice.local"), Clock.systemUTC()).close();
    assertEquals(before, certificate(folder.resolve("server.crt")), "not before it is due");
    Clock later = Clock.offset(Clock.system(ZoneOffset.UTC), Duration.ofDays(61));
    Network.ofOwnAuthority(folder, List.of("practice.local"), later).close();
    X509Certificate after = certificate(folder.resolve("server.crt"));
    assertTrue(after.getNotAfter().after(before.getNotAfter()));
    assertEquals(authority, certificate(folder.resolve("authority.crt")));
  }

  @Test
  void anotherNameGetsAnotherCertificate() throws Exception {
    X509Certificate before = certificate(folder.resolve("server.crt"));
    Network.ofOwnAuthority(folder, List.of("chair.local"), Clock.systemUTC()).close();
    assertFalse(before.equals(certificate(folder.resolve("server.crt"))));
  }
}
