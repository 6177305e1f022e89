/**
 * Drawings to scale as SVG text, one class a drawing, plain values in.
 *
 * <p>Colour and line are presentation attributes that print well on white paper, so no style sheet
 * is needed. Every element also carries a class, so that a page may restyle it (a style sheet wins
 * over a presentation attribute): {@code d-paper}, {@code d-ink}, {@code d-thin}, {@code d-guide},
 * {@code d-accent}, {@code d-accent-guide}, {@code d-accent-fill}, {@code d-tint}, {@code d-body},
 * {@code d-solid}, {@code d-hatch}, {@code d-text}, {@code d-quiet}, {@code d-strong}. Ring colours
 * ({@code d-ring}) keep their colour in every theme and always stand beside their name.
 *
 * <p>The id given to a drawing must be unique on its page: title and description hang on it.
 */
@NullMarked
package kerfwright.app.drawing;

import org.jspecify.annotations.NullMarked;
