package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.TableFile;
import org.frisket.material.csv.StockImport;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Stock from a table. */
@Command(name = "import", description = "Takes in stock from a table of comma-separated values, all of it or none.", sortOptions = false)
final class StockImportVerb implements Callable<Integer> {

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
		TableFile csv = new TableFile(file);
		byte[] content = csv.bytes();
		StockImport table = shelf.change(there -> {
			StockImport read = StockImport.of(content, there, replace);
			read.remarks().forEach(remark -> spec.commandLine().getErr().println(file + ": " + remark));
			if (!read.problems().isEmpty()) {
				csv.tell(read.problems(), !skipBad || !read.usable(), spec.commandLine().getErr());
			}
			read.run(there);
			return read;
		});
		PrintWriter out = spec.commandLine().getOut();
		out.println("took in " + table.rows().size() + " from " + file
				+ (table.problems().isEmpty() ? "" : "; problems: " + table.problems().size()));
		return table.problems().isEmpty() ? Status.DONE : Status.BLOCKED;
	}
}
