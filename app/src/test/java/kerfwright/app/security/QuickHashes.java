package kerfwright.app.security;

import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/** Passwords of the tests cost little; what one costs in a practice has a test of its own. */
public final class QuickHashes implements LauncherSessionListener {
  static final int KIB = 64;

  @Override
  public void launcherSessionOpened(LauncherSession session) {
    PasswordHash.kib = KIB;
  }
}
