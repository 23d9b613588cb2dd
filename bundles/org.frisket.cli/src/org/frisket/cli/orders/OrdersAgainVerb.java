package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.Stage;
import org.frisket.orders.work.again.Again;
import org.frisket.orders.work.again.Note;
import org.frisket.orders.work.again.Repeat;
import org.frisket.orders.work.again.Wish;
import org.frisket.prepare.fonts.FontLibraries;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A job that is made again. */
@Command(name = "again", description = "Orders a job again, and answers with the number of the new one and what has changed since.", sortOptions = false)
final class OrdersAgainVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "NUMBER", description = "Of the job that is made again; it stays as it is.")
	private long number;

	@Option(names = "--due", paramLabel = "DAY", description = "When it must be ready, such as 2027-03-01.")
	private LocalDate due;

	@Option(names = "--quantity", paramLabel = "COUNT", description = "How many copies (default as many as before).")
	private Integer quantity;

	@Option(names = "--enquiry", description = "Begins as an enquiry (default ordered).")
	private boolean enquiry;

	@Override
	public Integer call() throws Refusal {
		Repeat repeat = orders.desk(studio -> new Again(studio, FontLibraries.installed()).order(number,
				new Wish(Optional.ofNullable(due), Optional.ofNullable(quantity), enquiry ? Stage.ENQUIRY : Stage.ORDERED),
				orders.person()));
		if (orders.isJson()) {
			orders.out().println(Json.text(json(repeat)));
		} else {
			orders.out().println(repeat.order().number());
			repeat.notes().forEach(note -> orders.out().println(severity(note) + ": " + note.sentence()));
		}
		return Status.DONE;
	}

	private static JsonObject json(Repeat repeat) {
		JsonObject object = OrderReport.object(repeat.order(), LocalDate.now());
		JsonArray notes = new JsonArray();
		for (Note note : repeat.notes()) {
			JsonObject each = new JsonObject();
			each.addProperty("severity", severity(note));
			each.addProperty("what", note.what());
			each.addProperty("was", note.was());
			each.addProperty("is", note.is());
			each.addProperty("cure", note.cure());
			notes.add(each);
		}
		object.addProperty("repeats", repeat.original().number());
		object.add("notes", notes);
		return object;
	}

	private static String severity(Note note) {
		return note.severity().name().toLowerCase(Locale.ROOT);
	}
}
