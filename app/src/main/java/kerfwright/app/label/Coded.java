package kerfwright.app.label;

import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Function;
import kerfwright.app.words.Say;

/**
 * A kind of thing with a code of the practice's own; both empty where there is none with that id.
 *
 * @param label what stands on its label
 * @param page where its code leads
 */
public record Coded(
    BiFunction<UUID, Say, Optional<Label>> label, Function<UUID, Optional<String>> page) {}
