package kerfwright.app.signin;

import kerfwright.practice.setting.WholeSetting;

/** How people take turns at a device. */
public final class Switching {
  /** For so many minutes after somebody else went on, a tap brings one back; 0 asks for the PIN. */
  public static final WholeSetting MINUTES = new WholeSetting("signin.tap-minutes", 5, 0, 15);

  private Switching() {}
}
