package org.hammerscale.examples;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.Part;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialBook;

/** The file of a {@link TrialBook}, beside its order. */
final class TrialFile {
  private TrialFile() {}

  /**
   * Reads it; one that is not there yet holds no trial.
   *
   * @throws IOException in words for the user if it cannot be had
   */
  static TrialBook read(String name) throws IOException {
    if (isMissing(name)) {
      return TrialBook.empty();
    }
    String text = TextFile.read(name, "a trial file");
    try {
      return TrialBook.parse(text);
    } catch (IllegalArgumentException e) {
      throw new IOException(name + ": " + e.getMessage(), e);
    }
  }

  private static boolean isMissing(String name) throws IOException {
    try {
      return Files.notExists(Path.of(name));
    } catch (InvalidPathException e) {
      throw new IOException(Fault.echo(name) + " is no file's name; give it a plain one", e);
    }
  }

  /**
   * Writes it: beside the old one first, which is put in its place only when it is whole. If that
   * fails the old file is as it was.
   *
   * @throws IOException if it cannot be written
   */
  static void write(Path file, TrialBook book) throws IOException {
    Path whole = file.toAbsolutePath();
    Path beside = Files.createTempFile(whole.getParent(), whole.getFileName() + ".", ".new");
    try {
      Files.writeString(beside, book.text());
      try {
        Files.move(beside, whole, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** The book with a line for each piece to cut now that none waits for yet, to be filled in. */
  static TrialBook planned(TrialBook book, List<? extends Order> orders) {
    TrialBook planned = book;
    for (Order order : orders) {
      for (Part piece : order.trialPieces()) {
        for (int i = planned.waiting(piece.name()); i < piece.count(); i++) {
          planned = planned.with(piece.name(), Trial.of(piece.marked()));
        }
      }
    }
    return planned;
  }
}
