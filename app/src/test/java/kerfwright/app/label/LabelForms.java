package kerfwright.app.label;

import java.util.function.UnaryOperator;
import kerfwright.practice.setting.SettingValues;

/** The form of a sheet of labels, for the fuzzer. */
public final class LabelForms {
  private LabelForms() {}

  public static void sheet(UnaryOperator<String> sent) {
    SheetForm.of(sent::apply, SettingValues.none());
  }
}
