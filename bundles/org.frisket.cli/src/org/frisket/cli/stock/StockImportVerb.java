package org.frisket.cli.stock;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.material.csv.CsvProblem;
import org.frisket.material.csv.StockImport;
import org.frisket.model.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Stock from a table. */
@Command(name = "import", description = "Takes in stock from a table of comma-separated values, all of it or none.", sortOptions = false)
final class StockImportVerb implements Callable<Integer> {

	private static final int TOLD = 50;
	private static final long LARGEST = 256L << 20;

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "FILE", description = "The table; its first row has headers such as name, family, grammage g/m², caliper mm.")
	private Path file;

	@Option(names = "--skip-bad", description = "Takes in the good rows and leaves out the others.")
	private boolean skipBad;

	@Option(names = "--replace", description = "Rows take the place of stock with the same id.")
	private boolean replace;

	@Mixin
	private ShelfOption shelf = new ShelfOption();

	@Override
	public Integer call() throws Refusal {
		byte[] content = content();
		StockImport table = shelf.change(there -> {
			StockImport read = StockImport.of(content, there, replace);
			read.remarks().forEach(remark -> spec.commandLine().getErr().println(file + ": " + remark));
			if (!read.problems().isEmpty()) {
				refuseOrTell(read);
			}
			read.run(there);
			return read;
		});
		PrintWriter out = spec.commandLine().getOut();
		out.println("took in " + table.rows().size() + " from " + file
				+ (table.problems().isEmpty() ? "" : "; problems: " + table.problems().size()));
		return table.problems().isEmpty() ? Status.DONE : Status.BLOCKED;
	}

	private byte[] content() throws Refusal {
		try {
			if (Files.size(file) > LARGEST) {
				throw new Refusal(file + ": it is larger than " + (LARGEST >> 20) + " MB");
			}
			return Files.readAllBytes(file);
		} catch (IOException e) {
			throw new Refusal(file + ": " + WholeFile.reason(e));
		}
	}

	private void refuseOrTell(StockImport read) throws Refusal {
		List<CsvProblem> problems = read.problems();
		boolean refused = !skipBad || !read.usable();
		PrintWriter err = spec.commandLine().getErr();
		problems.stream().skip(refused ? 1 : 0).limit(TOLD).forEach(problem -> err.println(file + ": " + problem));
		if (problems.size() > TOLD) {
			err.println(file + ": problems in all: " + problems.size());
		}
		if (refused) {
			throw new Refusal(file + ": nothing was taken in: " + problems.get(0));
		}
	}
}
