package kerfwright.catalogue.tooth;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Systems of naming a tooth. */
public enum ToothSystem {
  FDI("FDI (ISO 3950)"),
  UNIVERSAL("Universal"),
  PALMER("Palmer");

  private final String label;

  ToothSystem(String label) {
    this.label = label;
  }

  /** The word used in files and settings: fdi, universal, palmer. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<ToothSystem> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id().equals(id)).findFirst();
  }

  public String label() {
    return label;
  }
}
