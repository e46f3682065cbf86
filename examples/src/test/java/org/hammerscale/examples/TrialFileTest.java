package org.hammerscale.examples;

import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of trials on the disk. */
class TrialFileTest {
  private static final Trial TRIAL = Trial.cut(inches(9)).off(PieceEnd.LAST, inches("1/4"));

  @TempDir Path folder;

  @Test
  void takesThePlaceOfTheOldFile() throws IOException {
    Path file = folder.resolve("trials.csv");
    Files.writeString(file, "# remark\nbroken\n");
    TrialFile.write(file, TrialFile.read(file.toString()).with("a", TRIAL));
    assertEquals("# remark\nbroken\na,9 in,,,1/4 in,\n", Files.readString(file));
    assertEquals(List.of("trials.csv"), names());
  }

  @Test
  void leavesTheOldOneIfItCannotBeReplaced() throws IOException {
    Path full = Files.createDirectory(folder.resolve("trials.csv"));
    Path kept = Files.writeString(full.resolve("kept"), "old");
    TrialBook book = TrialBook.empty().with("a", TRIAL);
    assertThrows(IOException.class, () -> TrialFile.write(full, book));
    assertEquals("old", Files.readString(kept));
    assertEquals(List.of("trials.csv"), names(), "nothing is left beside it");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
