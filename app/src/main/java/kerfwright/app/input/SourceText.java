package kerfwright.app.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import kerfwright.quantity.Message;

/**
 * The text of a file, with the name to show in messages. Never more than a megabyte of it.
 *
 * @param origin name to show
 * @param text its text
 */
public record SourceText(String origin, String text) {
  /** Largest file read, in bytes. */
  public static final int LIMIT_BYTES = 1024 * 1024;

  /** Reads a file of UTF-8 text. */
  public static SourceText of(Path file) throws BadInput {
    String origin = file.toString();
    if (Files.isDirectory(file)) {
      throw new BadInput(origin, Message.of("fault.folder"));
    }
    try (InputStream in = Files.newInputStream(file)) {
      return of(origin, in);
    } catch (NoSuchFileException missing) {
      throw new BadInput(origin, Message.of("fault.no-file"));
    } catch (IOException unreadable) {
      throw new BadInput(origin, Message.of("fault.unreadable"));
    }
  }

  /** Reads a stream of UTF-8 text to its end or to the limit. */
  public static SourceText of(String origin, InputStream in) throws IOException, BadInput {
    byte[] bytes = in.readNBytes(LIMIT_BYTES + 1);
    if (bytes.length > LIMIT_BYTES) {
      throw new BadInput(origin, Message.of("fault.file-too-large"));
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new SourceText(
          origin, PlainText.of(text.startsWith("\uFEFF") ? text.substring(1) : text));
    } catch (CharacterCodingException notText) {
      throw new BadInput(origin, Message.of("fault.not-utf8"));
    }
  }
}
