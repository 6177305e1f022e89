package kerfwright.physics.heat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kerfwright.physics.heat.field.HeatSeries;

/** A stored curve: time, dentine top, z = 4.5 mm. See README.md beside the files. */
record ReferenceCurve(double[] timesS, double[][] valuesC) {
  static ReferenceCurve read(String name) {
    try (InputStream in = ReferenceCurve.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("No reference " + name);
      }
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      double[] times = new double[lines.size()];
      double[][] values = new double[2][lines.size()];
      for (int i = 0; i < times.length; i++) {
        String[] cells = lines.get(i).split(",");
        times[i] = Double.parseDouble(cells[0]);
        values[0][i] = Double.parseDouble(cells[1]);
        values[1][i] = Double.parseDouble(cells[2]);
      }
      return new ReferenceCurve(times, values);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Largest difference at the two inner probes over all output times. */
  double differenceK(HeatSeries series) {
    if (series.timesS().length != timesS.length) {
      throw new IllegalArgumentException("Other output times than the reference");
    }
    double largest = 0;
    for (int i = 0; i < timesS.length; i++) {
      if (Math.abs(series.timesS()[i] - timesS[i]) > 1e-6) {
        throw new IllegalArgumentException("Other output times than the reference");
      }
      for (int p = 0; p < 2; p++) {
        largest = Math.max(largest, Math.abs(series.probesC()[p][i] - valuesC[p][i]));
      }
    }
    return largest;
  }
}
