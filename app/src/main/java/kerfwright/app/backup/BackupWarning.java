package kerfwright.app.backup;

import java.util.Map;
import java.util.function.Function;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import org.jspecify.annotations.Nullable;

/**
 * What every page says at its top while something is wrong with the practice's file, or the last
 * backup is old, or there is none.
 */
public record BackupWarning(@Nullable Backups backups, @Nullable Watch watch)
    implements Function<Say, String> {
  @Override
  public String apply(Say say) {
    if (backups == null) {
      return "";
    }
    String trouble =
        watch == null
            ? ""
            : watch
                .trouble()
                .map(
                    one ->
                        Templates.render(
                            say,
                            "backup/trouble.jte",
                            Map.of("trouble", one, "newest", backups.newest())))
                .orElse("");
    return trouble
        + backups
            .daysTooOld()
            .map(days -> Templates.render(say, "backup/warning.jte", Map.of("days", days)))
            .orElse("");
  }
}
