package kerfwright.app.backup;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.Map;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/**
 * The key that locks backups outside the data folder: 30 letters and digits in groups of five,
 * about 148 bits by chance, without those that look alike on paper. It is made once and kept with
 * the practice, and must be noted elsewhere: a backup is needed when the practice's machine is
 * gone.
 */
final class BackupKey {
  private static final String SETTING = "backup.key";
  private static final String SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
  private static final int GROUPS = 6;
  private static final int SIGNS_A_GROUP = 5;

  private BackupKey() {}

  /** The practice's key; made where there is none yet. */
  static String of(Settings settings) {
    for (int attempt = 0; attempt < 5; attempt++) {
      SettingValues set = settings.read();
      String known = set.text(SETTING, "");
      if (!known.isEmpty()) {
        return known;
      }
      settings.write(set.version(), Map.of(SETTING, fresh(new SecureRandom())));
    }
    throw new IllegalStateException("The settings are changed again and again");
  }

  private static String fresh(SecureRandom chance) {
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < GROUPS * SIGNS_A_GROUP; i++) {
      key.append(i > 0 && i % SIGNS_A_GROUP == 0 ? "-" : "");
      key.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
    }
    return key.toString();
  }

  /** As it was noted: letters large or small, groups apart or not. */
  static String typed(String text) {
    String bare = text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    return bare.replaceAll("(.{" + SIGNS_A_GROUP + "})(?=.)", "$1-");
  }
}
