package kerfwright.validation;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Starts the launcher with a kept practice and with the demo one, and measures, as JSON: the time
 * until the first page is answered, the memory the process holds, and for each page its server time
 * (median and 95th percentile) and its weight with everything it loads, as a browser asks for it
 * (packed). Argument: the launcher. Build first; the first start makes the class data and is not
 * counted.
 */
public final class PageBench {
  private static final int STARTS = 5;
  private static final int WARM_UP = 20;
  private static final int ASKED = 100;
  private static final Pattern LOADED =
      Pattern.compile("(?:src|href)=\"(/(?:static/[^\"]+|theme\\.css))\"");
  private static final Pattern LINKED = Pattern.compile("href=\"(/[^\"#]*)\"");

  private PageBench() {}

  public static void main(String[] arguments) throws Exception {
    Path launcher = Path.of(arguments[0]).toAbsolutePath();
    Path kept = Files.createTempDirectory("page-bench");
    try (Run first = new Run(launcher, "--demo", "--data", kept.toString())) {
      first.firstPage();
    }
    List<Double> firstPageS = new ArrayList<>();
    List<Double> firstPageOfDemoS = new ArrayList<>();
    for (int i = 0; i < STARTS; i++) {
      try (Run run = new Run(launcher, "--data", kept.toString())) {
        firstPageS.add(run.firstPage());
      }
      try (Run run = new Run(launcher, "--demo")) {
        firstPageOfDemoS.add(run.firstPage());
      }
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("bench", "pages");
    result.put("command", "java -cp ... kerfwright.validation.PageBench ./kerfwright");
    result.put("processors", Runtime.getRuntime().availableProcessors());
    result.put("java", Runtime.version().feature());
    result.put("firstPageS", firstPageS.stream().sorted().map(PageBench::rounded).toList());
    result.put(
        "firstPageOfDemoFilledAnewS",
        firstPageOfDemoS.stream().sorted().map(PageBench::rounded).toList());
    try (Run run = new Run(launcher, "--demo")) {
      run.firstPage();
      result.put("residentMiBAfterFirstPage", run.residentMiB());
      result.put("pages", pages(run));
      result.put("residentMiBAfterAllPages", run.residentMiB());
    }
    System.out.println(
        new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(result));
  }

  /** Every page the first page leads to, a plan among them. */
  private static List<Map<String, Object>> pages(Run run) throws Exception {
    Set<String> paths = new LinkedHashSet<>();
    paths.add("/");
    Matcher top = LINKED.matcher(run.get("/"));
    while (top.find()) {
      if (!top.group(1).startsWith("/static") && !top.group(1).endsWith(".css")) {
        paths.add(top.group(1).replace("&amp;", "&"));
      }
    }
    for (String path : List.copyOf(paths)) {
      if (path.startsWith("/plan?")) {
        paths.add(path.replace("/plan?", "/plan.pdf?"));
      }
    }
    List<Map<String, Object>> rows = new ArrayList<>();
    for (String path : paths) {
      String page = run.get(path);
      long weight = run.bytes(path);
      Matcher loaded = LOADED.matcher(page);
      Set<String> assets = new LinkedHashSet<>();
      while (loaded.find()) {
        assets.add(loaded.group(1));
      }
      for (String asset : assets) {
        weight += run.bytes(asset);
      }
      for (int i = 0; i < WARM_UP; i++) {
        run.get(path);
      }
      double[] ms = new double[ASKED];
      for (int i = 0; i < ASKED; i++) {
        long start = System.nanoTime();
        run.get(path);
        ms[i] = (System.nanoTime() - start) / 1e6;
      }
      Arrays.sort(ms);
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("path", path.length() > 60 ? path.substring(0, 60) + "..." : path);
      row.put("p50Ms", rounded(ms[ASKED / 2]));
      row.put("p95Ms", rounded(ms[ASKED * 95 / 100]));
      row.put("weightKb", Math.round(weight / 1000.0));
      rows.add(row);
    }
    return rows;
  }

  private static double rounded(double value) {
    return Math.round(value * 100) / 100.0;
  }

  /** One run of the program. */
  private static final class Run implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("(http://localhost:\\d+)(/\\S*)");
    private final long startNanos = System.nanoTime();
    private final Process process;
    private final HttpClient client =
        HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NORMAL)
            .cookieHandler(new CookieManager())
            .build();
    private final String address;
    private final String entrance;

    Run(Path launcher, String... options) throws IOException {
      List<String> command = new ArrayList<>(List.of(launcher.toString(), "serve", "--port", "0"));
      command.addAll(List.of(options));
      process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      BufferedReader out =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
      String line = out.readLine();
      Matcher at = ADDRESS.matcher(line == null ? "" : line);
      if (!at.find()) {
        throw new IOException("The program did not start: " + line);
      }
      address = at.group(1);
      entrance = at.group(2);
    }

    double firstPage() throws Exception {
      get(entrance);
      return (System.nanoTime() - startNanos) / 1e9;
    }

    String get(String path) throws Exception {
      HttpResponse<String> answer =
          client.send(
              HttpRequest.newBuilder(URI.create(address + path)).build(),
              HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() >= 400) {
        throw new IOException(path + " answered " + answer.statusCode());
      }
      return answer.body();
    }

    /** Bytes that cross the wire, packed as a browser asks for them. */
    long bytes(String path) throws Exception {
      return client
          .send(
              HttpRequest.newBuilder(URI.create(address + path))
                  .header("Accept-Encoding", "gzip")
                  .build(),
              HttpResponse.BodyHandlers.ofByteArray())
          .body()
          .length;
    }

    long residentMiB() throws IOException {
      Path status = Path.of("/proc/" + process.pid() + "/status");
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmRSS:")) {
          return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
        }
      }
      throw new IOException("No memory figure in " + status);
    }

    @Override
    public void close() {
      process.destroy();
      process.onExit().join();
    }
  }
}
