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

/**
 * The whole application on a free port, with the demo practice unless an empty one is asked for.
 */
final class Served implements AutoCloseable {
  private Javalin server;
  private int port;
  private final boolean demo;
  private final OpenPractice drawer;
  private final HttpClient client = HttpClient.newHttpClient();

  Served() throws BadInput {
    this(true);
  }

  private Served(boolean demo) throws BadInput {
    this.demo = demo;
    drawer = OpenPractice.of(new ServeOptions(demo, 0, null));
    start(0);
  }

  /** A practice that starts for the first time: nothing set, nothing in the drawer. */
  static Served empty() throws BadInput {
    return new Served(false);
  }

  private void start(int wanted) throws BadInput {
    Wiring wiring = Wiring.production();
    server =
        WebServer.create(
            wiring, drawer, demo ? wiring.demoCases().read() : List.of(), demo, wanted);
    server.start();
  }

  Javalin server() {
    return server;
  }

  /** Stops answering, as when the machine of the practice is out of reach. */
  void lose() {
    port = server.port();
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
    return "http://localhost:" + server.port() + path;
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
