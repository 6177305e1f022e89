package kerfwright.practice.setting;

import java.util.Map;

/** Where the practice's settings are kept. */
public interface Settings {
  SettingValues read();

  /**
   * Writes these values, all or none; an empty value takes the setting back to its default.
   *
   * @param version the version they were changed from
   * @return false when somebody else was quicker, and nothing is written
   */
  boolean write(int version, Map<String, String> changed);
}
