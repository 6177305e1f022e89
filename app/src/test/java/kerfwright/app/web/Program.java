package kerfwright.app.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.Main;

/** The program itself in a process of its own, as it is started from the command line. */
public final class Program implements AutoCloseable {
  private static final Pattern PLACE = Pattern.compile("(https?)://[^/]*:(\\d+)/");
  private static final Pattern CODE = Pattern.compile("one-time code (?:is )?(\\S+)");

  private final Process process;
  private final Path told;
  private final int port;

  private Program(Process process, Path told, int port) {
    this.process = process;
    this.told = told;
    this.port = port;
  }

  private static Process start(Path told, Map<String, String> surrounding, List<String> arguments)
      throws IOException {
    List<String> all = new ArrayList<>();
    all.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    all.addAll(List.of("-Xmx300m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    all.add(System.getProperty("java.class.path"));
    all.add(Main.class.getName());
    all.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(all).redirectError(told.toFile());
    builder.environment().remove("KERFWRIGHT_DATABASE");
    builder.environment().putAll(surrounding);
    return builder.start();
  }

  /** Serves until it is closed; what it tells besides the address goes to a file of the folder. */
  public static Program serve(Path folder, Map<String, String> surrounding, String... options)
      throws IOException {
    List<String> arguments = new ArrayList<>(List.of("serve", "--port", "0"));
    arguments.addAll(List.of(options));
    Path told = Files.createTempFile(folder, "told", ".txt");
    Process process = start(told, surrounding, arguments);
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher place = PLACE.matcher(line);
      if (place.find()) {
        return new Program(process, told, Integer.parseInt(place.group(2)));
      }
    }
    process.destroyForcibly();
    throw new IOException("it ended: " + Files.readString(told));
  }

  /** Runs to its end; gives what it said and its exit code behind it. */
  static String run(Path folder, String... arguments) throws Exception {
    Path told = Files.createTempFile(folder, "told", ".txt");
    Process process = start(told, Map.of(), List.of(arguments));
    process.getInputStream().readAllBytes();
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
    }
    return Files.readString(told) + "exit " + process.exitValue();
  }

  public int port() {
    return port;
  }

  /** The one-time code it printed. */
  String code() throws IOException, InterruptedException {
    for (int i = 0; i < 600; i++) {
      Matcher code = CODE.matcher(Files.readString(told));
      if (code.find()) {
        return code.group(1);
      }
      Thread.sleep(100);
    }
    throw new IOException("no code: " + Files.readString(told));
  }

  /** Ends it at once, as kill -9 does. */
  public void kill() throws InterruptedException {
    process.toHandle().destroyForcibly();
    process.waitFor(2, TimeUnit.MINUTES);
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
