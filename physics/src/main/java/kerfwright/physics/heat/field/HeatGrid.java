package kerfwright.physics.heat.field;

import java.util.List;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;

/**
 * The mesh and what belongs to it: nodes on lines in r and z with finite volumes around them, every
 * layer boundary and the edge of the spot on a line, each element of one material. Lengths in
 * metres; areas and circumferences per radian.
 *
 * <pre>
 * r, z       lines                                area    top area of each column
 * gr         r_mid / dr between columns           gz      k / dz of each element
 * kz, cz     k and rho c of each element          rowC    rho c times height of each row
 * rowK       k times height of each row           rowH    height of each row
 * columns    columns with unknown temperature     rows    rows with unknown temperature
 * spot       columns wholly inside the spot       wall    column on its edge, -1 if there is none
 * </pre>
 */
final class HeatGrid {
  final double[] r;
  final double[] z;
  final double[] area;
  final double[] gr;
  final double[] kz;
  final double[] cz;
  final double[] gz;
  final double[] rowC;
  final double[] rowK;
  final double[] rowH;
  final int columns;
  final int rows;
  final int spot;
  final int wall;
  final double wallInner;
  final double wallOuter;
  final double sideLink;
  final double sideWash;
  final double bottomLink;

  HeatGrid(HeatBody body, double spotRadiusM, double[] r, double[] z) {
    this.r = r;
    this.z = z;
    int nr = r.length - 1;
    int nz = z.length - 1;
    area = new double[nr + 1];
    gr = new double[nr];
    for (int i = 0; i <= nr; i++) {
      double inner = i == 0 ? 0 : 0.5 * (r[i - 1] + r[i]);
      double outer = i == nr ? r[nr] : 0.5 * (r[i] + r[i + 1]);
      area[i] = 0.5 * (outer * outer - inner * inner);
      if (i < nr) {
        gr[i] = outer / (r[i + 1] - r[i]);
      }
    }
    kz = new double[nz];
    cz = new double[nz];
    gz = new double[nz];
    rowC = new double[nz + 1];
    rowK = new double[nz + 1];
    rowH = new double[nz + 1];
    for (int j = 0; j < nz; j++) {
      HeatLayer layer = layerAt(body.layers(), 0.5 * (z[j] + z[j + 1]));
      double dz = z[j + 1] - z[j];
      kz[j] = layer.conductivityWPerMK();
      cz[j] = layer.volumetricHeatJPerM3K();
      gz[j] = kz[j] / dz;
      for (int row = j; row <= j + 1; row++) {
        rowC[row] += 0.5 * dz * cz[j];
        rowK[row] += 0.5 * dz * kz[j];
        rowH[row] += 0.5 * dz;
      }
    }
    boolean sideHeld = body.side().isHeld();
    columns = sideHeld ? nr : nr + 1;
    sideLink = sideHeld ? gr[nr - 1] : 0;
    sideWash = body.side().washingWPerM2K() * r[nr];
    rows = body.bottom().isHeld() ? nz : nz + 1;
    bottomLink = body.bottom().isHeld() ? gz[nz - 1] : body.bottom().washingWPerM2K();
    int edge = 0;
    while (edge < nr && r[edge] < spotRadiusM * (1 - 1e-9)) {
      edge++;
    }
    if (edge >= nr) {
      spot = columns;
      wall = -1;
      wallInner = 0;
      wallOuter = 0;
    } else {
      spot = edge;
      wall = edge;
      double inner = 0.5 * (r[edge - 1] + r[edge]);
      wallInner = 0.5 * (r[edge] * r[edge] - inner * inner);
      wallOuter = area[edge] - wallInner;
    }
  }

  private static HeatLayer layerAt(List<HeatLayer> layers, double depthM) {
    double bottom = 0;
    for (HeatLayer layer : layers) {
      bottom += layer.thicknessMm() * 1e-3;
      if (depthM < bottom) {
        return layer;
      }
    }
    return layers.get(layers.size() - 1);
  }
}
