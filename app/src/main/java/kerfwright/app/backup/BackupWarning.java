package kerfwright.app.backup;

import java.util.Map;
import java.util.function.Function;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import org.jspecify.annotations.Nullable;

/** What every page says at its top while the last backup is old, or there is none. */
public record BackupWarning(@Nullable Backups backups) implements Function<Say, String> {
  @Override
  public String apply(Say say) {
    return backups == null
        ? ""
        : backups
            .daysTooOld()
            .map(days -> Templates.render(say, "backup/warning.jte", Map.of("days", days)))
            .orElse("");
  }
}
