package kerfwright.app.teaching;

import java.util.function.Function;
import kerfwright.app.words.Say;

/**
 * One way to teach, on the page of all of them.
 *
 * @param path where it leads
 * @param title key of its title
 * @param about key of what it is for, one sentence
 * @param picture draws what stands beside it
 */
public record Card(String path, String title, String about, Function<Say, String> picture) {}
