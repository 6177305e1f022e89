package kerfwright.catalogue.tooth;

import kerfwright.quantity.Identified;

/** Systems of naming a tooth. */
public enum ToothSystem implements Identified {
  FDI("FDI (ISO 3950)"),
  UNIVERSAL("Universal"),
  PALMER("Palmer");

  private final String label;

  ToothSystem(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
