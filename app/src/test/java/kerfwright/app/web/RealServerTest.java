package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import kerfwright.app.network.Network;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is started behind a proxy or with a given certificate, asked over a line. */
class RealServerTest {
  private static final String NAME = "practice.example";
  private static final String PASSWORD = "velvet anvil under seven lamps";

  @TempDir private Path folder;

  private static String ask(Socket line, String method, String path, String head, String body)
      throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    String all =
        method
            + " "
            + path
            + " HTTP/1.1\r\n"
            + head
            + "Connection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n"
            + "Content-Length: "
            + bytes.length
            + "\r\n\r\n"
            + body;
    line.getOutputStream().write(all.getBytes(StandardCharsets.UTF_8));
    line.getOutputStream().flush();
    return new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  private static int status(String answer) {
    return Integer.parseInt(answer.substring(9, 12));
  }

  /** As a proxy passes it on: the name, and at the end of the list the address that called it. */
  private static String proxied(
      Program program, String method, String path, String host, String from, String body)
      throws IOException {
    try (Socket line = new Socket("127.0.0.1", program.port())) {
      String head =
          "Host: " + host + "\r\nOrigin: https://" + host + "\r\nX-Forwarded-For: " + from + "\r\n";
      return ask(line, method, path, head, body);
    }
  }

  private static String signIn(Program program, String from, String password) throws IOException {
    String body = "initials=OW&password=" + URLEncoder.encode(password, StandardCharsets.UTF_8);
    return proxied(program, "POST", "/sign-in", NAME, from, body);
  }

  @Test
  void behindAProxyItAnswersToItsNameAndCountsTheAddressTheProxyAdds() throws Exception {
    try (Program program =
        Program.serve(
            folder,
            Map.of(),
            "--behind-proxy",
            "--name",
            NAME,
            "--data",
            folder.resolve("data").toString())) {
      String first = proxied(program, "GET", "/drawer", NAME, "192.0.2.1", "");
      assertEquals(303, status(first), first);
      assertTrue(first.contains("Strict-Transport-Security: max-age="), first);
      assertEquals(
          403, status(proxied(program, "GET", "/drawer", "evil.example", "192.0.2.1", "")));
      String made =
          proxied(
              program,
              "POST",
              "/first",
              NAME,
              "192.0.2.1",
              "code="
                  + program.code()
                  + "&initials=OW&password="
                  + URLEncoder.encode(PASSWORD, StandardCharsets.UTF_8));
      assertEquals(303, status(made), made);
      assertTrue(made.contains("Set-Cookie: __Host-kerfwright="), made);
      assertTrue(made.contains("Secure") && made.contains("HttpOnly"), made);
      for (int i = 0; i < 4; i++) {
        // the caller writes what it likes in front; the proxy adds the address that called it
        signIn(program, "198.51.100." + i + ", 192.0.2.7", "guess number " + i);
      }
      assertEquals(429, status(signIn(program, "203.0.113.5, 192.0.2.7", PASSWORD)));
      assertEquals(303, status(signIn(program, "192.0.2.7, 192.0.2.8", PASSWORD)));
      assertNobodyElseReaches(program.port());
    }
  }

  private static void assertNobodyElseReaches(int port) throws IOException {
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress own : Collections.list(each.getInetAddresses())) {
        if (own instanceof Inet4Address && !own.isLoopbackAddress()) {
          assertThrows(IOException.class, () -> new Socket(own, port).close(), own.toString());
        }
      }
    }
  }

  private static X509Certificate certificate(Path file) throws Exception {
    try (InputStream in = Files.newInputStream(file)) {
      return (X509Certificate) CertificateFactory.getInstance("X.509").generateCertificate(in);
    }
  }

  private static SSLContext trusting(Path authority) throws Exception {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, null);
    store.setCertificateEntry("given", certificate(authority));
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(store);
    SSLContext tls = SSLContext.getInstance("TLS");
    tls.init(null, trust.getTrustManagers(), null);
    return tls;
  }

  @Test
  void aGivenCertificateIsShownAndNoAuthorityOfOurOwn() throws Exception {
    Path elsewhere = folder.resolve("elsewhere");
    Network.ofOwnAuthority(elsewhere, List.of("practice.local"), Clock.systemUTC()).close();
    Path data = folder.resolve("data");
    try (Program program =
        Program.serve(
            folder,
            Map.of(),
            "--lan",
            "--certificate",
            elsewhere.resolve("server.crt").toString(),
            "--key",
            elsewhere.resolve("server.key").toString(),
            "--name",
            "practice.local",
            "--data",
            data.toString())) {
      SSLContext tls = trusting(elsewhere.resolve("authority.crt"));
      try (SSLSocket line =
          (SSLSocket) tls.getSocketFactory().createSocket("localhost", program.port())) {
        line.startHandshake();
        assertEquals(
            certificate(elsewhere.resolve("server.crt")),
            line.getSession().getPeerCertificates()[0]);
        String answer =
            ask(line, "GET", "/drawer", "Host: practice.local:" + program.port() + "\r\n", "");
        assertEquals(303, status(answer), answer);
        assertTrue(answer.contains("Strict-Transport-Security"), answer);
      }
      assertFalse(Files.exists(data.resolve("tls")), "an authority was made");
    }
  }

  @Test
  void aKeyOfAnotherCertificateIsToldAtTheStart() throws Exception {
    Path one = folder.resolve("one");
    Path other = folder.resolve("other");
    Network.ofOwnAuthority(one, List.of(), Clock.systemUTC()).close();
    Network.ofOwnAuthority(other, List.of(), Clock.systemUTC()).close();
    String said =
        Program.run(
            folder,
            "serve",
            "--lan",
            "--port",
            "0",
            "--certificate",
            one.resolve("server.crt").toString(),
            "--key",
            other.resolve("server.key").toString(),
            "--data",
            folder.resolve("data").toString());
    assertTrue(said.contains("the key does not belong to the certificate"), said);
    assertTrue(said.endsWith("exit 2"), said);
  }
}
