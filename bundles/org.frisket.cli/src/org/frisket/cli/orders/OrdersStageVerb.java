package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Where a job stands from now on. */
@Command(name = "stage", description = "Brings a job to another stage, or back with --undo.", sortOptions = false)
final class OrdersStageVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(index = "0", paramLabel = "NUMBER", description = "Of the job.")
	private long number;

	@Parameters(index = "1", arity = "0..1", paramLabel = "STAGE", description = "enquiry, ordered, designed, approved, printed, cut, finished, delivered, on-hold or cancelled.")
	private String stage;

	@Option(names = "--remark", paramLabel = "TEXT", defaultValue = "", description = "Why.")
	private String remark;

	@Option(names = "--undo", description = "Back to the stage before the last change; the history tells of both.")
	private boolean undo;

	@Override
	public Integer call() throws Refusal {
		if (undo == (stage != null)) {
			throw new Refusal("say which stage, or --undo");
		}
		Stage to = undo ? null : OrderReport.stage(stage);
		Entry entry = orders.book(book -> undo ? book.undoStage(number, orders.person())
				: book.stage(number, to, orders.person(), remark));
		OrderReport report = new OrderReport(orders.out(), orders.isJson());
		if (orders.isJson()) {
			report.one(entry, orders.book(book -> book.history(number)), LocalDate.now());
		} else {
			orders.out().println(OrderReport.line(entry, LocalDate.now()));
		}
		return Status.DONE;
	}
}
