package kerfwright.app.record;

import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.function.UnaryOperator;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;

/** The form of a use, for the fuzzer. */
public final class RecordForms {
  private static final Say SAY = Say.in(Language.ENGLISH);

  private RecordForms() {}

  public static void use(UnaryOperator<String> sent, Drawer drawer) {
    EntryForm.of(sent::apply).report(SAY, drawer, ZoneOffset.UTC, null, new HashMap<>());
  }
}
