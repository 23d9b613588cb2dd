package org.frisket.orders.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Stage;

/**
 * What a docket says, as values. Lengths are in mm, times in seconds. Texts that are not known are empty.
 *
 * @param code     text of the code on it; empty without a number
 * @param width    of the job as it lies on the bench, 0 if nothing is designed yet
 * @param seconds  of all runs, for all copies
 * @param blocking because of which it must not be made like this
 * @param cautions what to mind
 * @param signed   the stages that somebody signs
 */
public record DocketFacts(String number, String code, String title, String customer, Optional<LocalDate> due, Stage stage,
		int quantity, double width, double height, List<Part> parts, List<Work> work, List<Sheet> sheets, double seconds,
		List<String> blocking, List<String> cautions, String notes, List<Signed> signed) {

	/**
	 * Parts that are alike.
	 *
	 * @param stock  as people call it
	 * @param colour as people call it: the name of the layer
	 * @param each   in one copy of the job
	 * @param all    in all copies
	 */
	public record Part(String stock, String colour, String title, double width, double height, int each, int all) {
	}

	/**
	 * What a stock is worked with.
	 *
	 * @param operation as people call it
	 * @param settings  in the steps of the machine, in words
	 * @param basis     what they rest on, in words
	 * @param places    which sheets they are for, as people call them
	 */
	public record Work(String stock, String operation, String tool, String settings, String basis, List<String> places) {
	}

	/**
	 * A sheet.
	 *
	 * @param parts       how many lie on it, guests of other jobs counted
	 * @param utilisation what share of it they take up, from 0 to 1
	 */
	public record Sheet(String name, String stock, double width, double height, int parts, double utilisation, double seconds) {
	}

	/**
	 * A stage that somebody signs.
	 *
	 * @param day on which it came to it, empty if it has not yet
	 * @param who brought it there
	 */
	public record Signed(Stage stage, Optional<LocalDate> day, String who) {
	}

	public DocketFacts {
		parts = List.copyOf(parts);
		work = List.copyOf(work);
		sheets = List.copyOf(sheets);
		blocking = List.copyOf(blocking);
		cautions = List.copyOf(cautions);
		signed = List.copyOf(signed);
	}

	/** Of a job worked through as far as it goes. */
	public static DocketFacts of(JobWork work, PaperForm form) {
		return new FactsOfWork(work, form).facts();
	}
}
