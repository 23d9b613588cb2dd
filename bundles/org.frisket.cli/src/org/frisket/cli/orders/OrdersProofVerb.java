package org.frisket.cli.orders;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.PaperKind;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What a customer was shown. */
@Command(name = "proof", description = "Notes that a proof of a job was made, on paper or as a file; approval needs one.", sortOptions = false)
final class OrdersProofVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "NUMBER", description = "Of the job.")
	private long number;

	@Option(names = "--remark", paramLabel = "TEXT", defaultValue = "", description = "To whom it went, or what was shown.")
	private String remark;

	@Override
	public Integer call() throws Refusal {
		orders.book(book -> book.handedOut(number, PaperKind.PROOF, orders.person(), remark));
		return Status.DONE;
	}
}
