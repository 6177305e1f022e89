package kerfwright.app.web;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import kerfwright.app.Wiring;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.input.BadInput;

/** The whole application on a free port, with the demo practice. */
final class Served implements AutoCloseable {
  private Javalin server;
  private int port;
  private final OpenPractice drawer;
  private final HttpClient client = HttpClient.newHttpClient();

  Served() throws BadInput {
    Wiring wiring = Wiring.production();
    drawer = OpenPractice.of(new ServeOptions(true, 0, null));
    server = WebServer.create(wiring, drawer, wiring.demoCases().read(), true, 0);
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
    Wiring wiring = Wiring.production();
    server = WebServer.create(wiring, drawer, wiring.demoCases().read(), true, port);
    server.start();
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

  @Override
  public void close() {
    server.stop();
    drawer.close();
  }
}
