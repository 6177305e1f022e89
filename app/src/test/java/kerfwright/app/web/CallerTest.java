package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.Javalin;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A real server and real lines: who closes theirs is noticed while their call is worked on. */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class CallerTest {
  private static final int LOOKS = 5;

  private final BlockingQueue<String> seen = new LinkedBlockingQueue<>();
  private Javalin server;

  @BeforeEach
  void start() {
    server =
        Javalin.create(
            config -> {
              config.jetty.host = "127.0.0.1";
              config.jetty.port = 0;
              config.routes.before(Caller::is);
              config.routes.get(
                  "/until-gone",
                  call -> {
                    seen.add("begun");
                    while (!Caller.hasGone()) {
                      Thread.sleep(20);
                    }
                    seen.add("gone");
                  });
              config.routes.get(
                  "/while-there",
                  call -> {
                    boolean gone = false;
                    for (int i = 0; i < LOOKS; i++) {
                      gone |= Caller.hasGone();
                      Thread.sleep(20);
                    }
                    call.result(gone ? "gone" : "there");
                  });
            });
    server.start();
  }

  @AfterEach
  void stop() {
    server.stop();
  }

  private Socket asking(String... paths) throws IOException {
    Socket line = new Socket("127.0.0.1", server.port());
    StringBuilder all = new StringBuilder();
    for (String path : paths) {
      all.append("GET ").append(path).append(" HTTP/1.1\r\nHost: localhost\r\n\r\n");
    }
    line.getOutputStream().write(all.toString().getBytes(StandardCharsets.US_ASCII));
    line.getOutputStream().flush();
    return line;
  }

  private static String head(BufferedReader answer) throws IOException {
    StringBuilder all = new StringBuilder();
    for (String one = answer.readLine(); one != null && !one.isEmpty(); one = answer.readLine()) {
      all.append(one).append('\n');
    }
    return all.toString();
  }

  private static BufferedReader reader(Socket line) throws IOException {
    return new BufferedReader(new InputStreamReader(line.getInputStream(), StandardCharsets.UTF_8));
  }

  @Test
  void aLineThatIsClosedIsNoticed() throws Exception {
    Socket line = asking("/until-gone");
    assertEquals("begun", seen.take());
    line.close();
    assertEquals("gone", seen.take());
  }

  @Test
  void whoStillWaitsIsThereAndTheLineGoesOn() throws Exception {
    try (Socket line = asking("/while-there")) {
      BufferedReader answer = reader(line);
      for (int i = 0; i < 2; i++) {
        String head = head(answer);
        assertTrue(head.startsWith("HTTP/1.1 200"), head);
        assertFalse(head.contains("close"), head);
        char[] body = new char[5];
        assertEquals(5, answer.read(body));
        assertEquals("there", new String(body));
        line.getOutputStream()
            .write(
                "GET /while-there HTTP/1.1\r\nHost: localhost\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  @Test
  void aCallSentBeforeTheAnswerClosesTheLineAndIsNotAnsweredWrongly() throws Exception {
    try (Socket line = asking("/while-there")) {
      // the next call, before the answer to the first
      line.getOutputStream()
          .write(
              "GET /while-there HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
                  .getBytes(StandardCharsets.US_ASCII));
      BufferedReader answer = reader(line);
      String head = head(answer);
      assertTrue(head.startsWith("HTTP/1.1 200"), head);
      String rest = "";
      for (String one = answer.readLine(); one != null; one = answer.readLine()) {
        rest += one;
      }
      assertTrue(rest.equals("there") || rest.startsWith("thereHTTP/1.1 200"), "answered: " + rest);
    }
  }

  @Test
  void whoeverWorksForNobodyGoesOn() throws Exception {
    Thread other = new Thread(() -> seen.add(Boolean.toString(Caller.hasGone())));
    other.start();
    assertEquals("false", seen.take());
  }
}
