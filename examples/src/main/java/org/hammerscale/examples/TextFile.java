package org.hammerscale.examples;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.hammerscale.examples.order.Fault;

/** A file that the user named, read whole. */
final class TextFile {
  private TextFile() {}

  /**
   * Its text.
   *
   * @param what it should be, for the fault, such as {@code an order file}
   * @throws IOException in words for the user if it cannot be had
   */
  static String read(String name, String what) throws IOException {
    try {
      return Files.readString(Path.of(name));
    } catch (InvalidPathException e) {
      throw new IOException(
          Fault.echo(name)
              + ": the terminal's character set does not hold this name; set LC_ALL=C.UTF-8, or"
              + " give the file a plain name",
          e);
    } catch (NoSuchFileException e) {
      throw new IOException(name + ": there is no such file; give the path of " + what, e);
    } catch (CharacterCodingException e) {
      throw new IOException(name + ": is not text in UTF-8; save it as UTF-8", e);
    } catch (IOException e) {
      throw new IOException(name + ": cannot be read (" + e.getMessage() + "); give " + what, e);
    }
  }

  /**
   * Writes a text, and the folders that it lies in.
   *
   * @throws IOException in words for the user if it cannot be done
   */
  static void write(String name, String text) throws IOException {
    try {
      Path file = Path.of(name).toAbsolutePath();
      Path folder = file.getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Files.writeString(file, text);
    } catch (InvalidPathException | IOException e) {
      throw new IOException(
          Fault.echo(name) + ": cannot be written (" + e.getMessage() + "); give another file", e);
    }
  }
}
