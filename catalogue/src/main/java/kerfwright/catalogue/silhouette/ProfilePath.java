package kerfwright.catalogue.silhouette;

import java.util.ArrayList;
import java.util.List;

/** Builds a profile from the tip on, out of lines, quarter ellipses and pointed arches. */
final class ProfilePath {
  private static final int STEPS = 20;

  private final List<ProfilePoint> points = new ArrayList<>();
  private double z;
  private double r;

  ProfilePath(double zMm, double rMm) {
    lineTo(zMm, rMm);
  }

  /** A straight stretch; one of no length is left out. */
  ProfilePath lineTo(double zMm, double rMm) {
    if (points.isEmpty() || zMm != z || rMm != r) {
      points.add(new ProfilePoint(zMm, rMm));
      z = zMm;
      r = rMm;
    }
    return this;
  }

  /** A quarter ellipse that leaves across the axis and arrives along it: a rounded end. */
  ProfilePath roundTo(double zMm, double rMm) {
    double z0 = z;
    double r0 = r;
    for (int i = 1; i < STEPS; i++) {
      double t = Math.PI / 2 * i / STEPS;
      lineTo(z0 + (zMm - z0) * (1 - Math.cos(t)), r0 + (rMm - r0) * Math.sin(t));
    }
    return lineTo(zMm, rMm);
  }

  /** A quarter ellipse that leaves along the axis and arrives across it: a rounded back. */
  ProfilePath closeTo(double zMm, double rMm) {
    double z0 = z;
    double r0 = r;
    for (int i = 1; i < STEPS; i++) {
      double t = Math.PI / 2 * i / STEPS;
      lineTo(z0 + (zMm - z0) * Math.sin(t), rMm + (r0 - rMm) * Math.cos(t));
    }
    return lineTo(zMm, rMm);
  }

  /** An arch that starts at an angle and arrives along the axis: a pointed end. */
  ProfilePath archTo(double zMm, double rMm) {
    double z0 = z;
    double r0 = r;
    for (int i = 1; i < STEPS; i++) {
      double u = (double) i / STEPS;
      lineTo(z0 + (zMm - z0) * u, r0 + (rMm - r0) * (2 * u - u * u));
    }
    return lineTo(zMm, rMm);
  }

  /** An arch that leaves along the axis and arrives at an angle. */
  ProfilePath fallTo(double zMm, double rMm) {
    double z0 = z;
    double r0 = r;
    for (int i = 1; i < STEPS; i++) {
      double u = (double) i / STEPS;
      lineTo(z0 + (zMm - z0) * u, r0 + (rMm - r0) * u * u);
    }
    return lineTo(zMm, rMm);
  }

  /** An S-shaped stretch that leaves and arrives along the axis. */
  ProfilePath swayTo(double zMm, double rMm) {
    double z0 = z;
    double r0 = r;
    for (int i = 1; i < STEPS; i++) {
      double u = (double) i / STEPS;
      lineTo(z0 + (zMm - z0) * u, r0 + (rMm - r0) * (1 - Math.cos(Math.PI * u)) / 2);
    }
    return lineTo(zMm, rMm);
  }

  List<ProfilePoint> points() {
    return List.copyOf(points);
  }
}
