package org.frisket.cli.work;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.cli.line.Refusal;
import org.frisket.model.WholeFile;
import org.frisket.studio.csv.CsvProblem;

/** A table of comma-separated values that somebody names. */
public record TableFile(Path file) {

	private static final int TOLD = 50;
	private static final long LARGEST = 256L << 20;

	public byte[] bytes() throws Refusal {
		if (Files.isDirectory(file)) {
			throw new Refusal(file + ": this is a folder");
		}
		try {
			if (Files.size(file) > LARGEST) {
				throw new Refusal(file + ": it is larger than " + (LARGEST >> 20) + " MB");
			}
			return Files.readAllBytes(file);
		} catch (IOException e) {
			throw new Refusal(file + ": " + WholeFile.reason(e));
		}
	}

	/**
	 * Tells what is wrong with it, the first of many.
	 *
	 * @param refused whether the first is told as the reason that nothing is taken in
	 */
	public void tell(List<CsvProblem> problems, boolean refused, PrintWriter err) throws Refusal {
		problems.stream().skip(refused ? 1 : 0).limit(TOLD).forEach(problem -> err.println(file + ": " + problem));
		if (problems.size() > TOLD) {
			err.println(file + ": problems in all: " + problems.size());
		}
		if (refused) {
			throw new Refusal(file + ": nothing was taken in: " + problems.get(0));
		}
	}
}
