package org.frisket.cli.orders;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.work.JobStages;
import org.frisket.prepare.Finding;
import org.frisket.studio.StudioFolder;

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

	@Option(names = "--anyway", description = "Even if a rule of the studio is against it; see frisket orders rules.")
	private boolean anyway;

	@Override
	public Integer call() throws Refusal {
		if (undo == (stage != null)) {
			throw new Refusal("say which stage, or --undo");
		}
		Stage to = undo ? null : OrderReport.stage(stage);
		Entry entry = orders.desk(studio -> {
			JobStages.Moved moved = moved(studio, to);
			moved.notes().forEach(note -> orders.err().println("caution: " + note));
			return moved.entry();
		});
		OrderReport report = new OrderReport(orders.out(), orders.isJson());
		if (orders.isJson()) {
			report.one(entry, orders.book(book -> book.history(number)), LocalDate.now());
		} else {
			orders.out().println(OrderReport.line(entry, LocalDate.now()));
		}
		return Status.DONE;
	}

	private JobStages.Moved moved(StudioFolder studio, Stage to) throws IOException, OrderException, Refusal {
		JobStages stages = new JobStages(studio);
		if (undo) {
			return new JobStages.Moved(stages.undo(number, orders.person()), List.of());
		}
		if (anyway) {
			return stages.moveAnyway(number, to, orders.person(), remark);
		}
		try {
			return stages.move(number, to, orders.person(), remark, () -> blocking(new OrderBook(studio)));
		} catch (StageRuleException against) {
			throw new Refusal(against.getMessage() + "; --anyway does it this once");
		}
	}

	/** What cannot be worked out cannot be cut either. */
	private List<String> blocking(OrderBook book) {
		try {
			return Preparation.of(book.open(number).job(), Tolerance.DEFAULT).findings().stream().filter(Finding::isBlocking)
					.map(Finding::message).toList();
		} catch (IOException | OrderException | Refusal e) {
			return List.of(e.getMessage());
		}
	}
}
