package kerfwright.practice.learning;

/**
 * A normal distribution of several quantities, from its precision and precision-weighted mean.
 *
 * @param means means
 * @param covariance covariance
 */
record Posterior(double[] means, double[][] covariance) {

  /** Inverts the precision, which is symmetric and positive definite, by Gauss-Jordan. */
  static Posterior of(double[][] precision, double[] weighted) {
    int size = weighted.length;
    double[][] left = new double[size][];
    double[][] inverse = new double[size][size];
    for (int i = 0; i < size; i++) {
      left[i] = precision[i].clone();
      inverse[i][i] = 1;
    }
    for (int pivot = 0; pivot < size; pivot++) {
      double by = left[pivot][pivot];
      if (!(by > 0)) {
        throw new IllegalStateException("precision is not positive definite: " + by);
      }
      for (int j = 0; j < size; j++) {
        left[pivot][j] /= by;
        inverse[pivot][j] /= by;
      }
      for (int i = 0; i < size; i++) {
        double times = left[i][pivot];
        if (i != pivot && times != 0) {
          for (int j = 0; j < size; j++) {
            left[i][j] -= times * left[pivot][j];
            inverse[i][j] -= times * inverse[pivot][j];
          }
        }
      }
    }
    double[] means = new double[size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        means[i] += inverse[i][j] * weighted[j];
      }
    }
    return new Posterior(means, inverse);
  }

  double mean(int i) {
    return means[i];
  }

  double variance(int i) {
    return covariance[i][i];
  }

  double varianceOfSum(int i, int j) {
    return covariance[i][i] + covariance[j][j] + 2 * covariance[i][j];
  }
}
