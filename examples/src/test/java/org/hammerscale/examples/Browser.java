package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs of the machine that look at pages; a test that wants one is skipped without it. */
final class Browser {
  private Browser() {}

  /** Runs a program to its end and gives what it wrote; the test is skipped if there is none. */
  static String run(Path folder, String program, String... arguments)
      throws IOException, InterruptedException {
    boolean found =
        Arrays.stream(System.getenv("PATH").split(File.pathSeparator, -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
    assumeTrue(found, program + " is not on this machine: what it would show is not looked at");
    List<String> command = new ArrayList<>(List.of(program));
    command.addAll(List.of(arguments));
    Path output = folder.resolve("output.txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(output.toFile())
            .redirectError(folder.resolve("errors.txt").toFile())
            .start();
    boolean ended = process.waitFor(2, TimeUnit.MINUTES);
    process.destroy();
    assertTrue(ended, program + " did not come to an end");
    return Files.readString(output);
  }

  /** A page as the browser has it after it was loaded. */
  static String load(Path folder, Path page) throws IOException, InterruptedException {
    return headless(folder, page, "--dump-dom", "--enable-logging=stderr");
  }

  /** Prints a page. */
  static Path print(Path folder, Path page) throws IOException, InterruptedException {
    Path pdf = folder.resolve("page.pdf");
    headless(folder, page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
    return pdf;
  }

  private static String headless(Path folder, Path page, String... more)
      throws IOException, InterruptedException {
    List<String> arguments = new ArrayList<>(List.of("--headless", "--no-sandbox"));
    arguments.add("--disable-gpu");
    arguments.add("--user-data-dir=" + folder.resolve("profile"));
    arguments.addAll(List.of(more));
    arguments.add(page.toUri().toString());
    return run(folder, "chromium", arguments.toArray(new String[0]));
  }
}
