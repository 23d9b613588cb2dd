package org.frisket.cli.orders;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** All that is kept of one of them. */
@Command(name = "export", description = "Writes all that is kept of a customer as JSON, for whoever asks what that is.", sortOptions = false)
final class CustomerExportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersCustomerVerb group;

	@Parameters(paramLabel = "NAME", description = "Of the customer.")
	private String name;

	@Option(names = "--out", paramLabel = "FILE", description = "The file to write (default: to the screen).")
	private Path file;

	@Override
	public Integer call() throws Refusal {
		return group.customers(customers -> {
			String json = customers.export(customers.find(name));
			if (file == null) {
				group.orders().out().println(json);
			} else {
				WholeFile.write(out -> out.write((json + "\n").getBytes(StandardCharsets.UTF_8)), file);
			}
			return Status.DONE;
		});
	}
}
