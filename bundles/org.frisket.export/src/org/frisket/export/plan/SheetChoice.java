package org.frisket.export.plan;

import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Sheet;

/**
 * What of a job is handed out.
 *
 * @param bench   the job as it lies on the bench, whatever sheets it has
 * @param numbers of sheets from 1, such as {@code 1, 3-5}; empty for all
 */
public record SheetChoice(boolean bench, String numbers) {

	/** The job as it lies on the bench. */
	public static final SheetChoice BENCH = new SheetChoice(true, "");
	/** All sheets; the bench if there are none. */
	public static final SheetChoice ALL = new SheetChoice(false, "");

	private static final Pattern RANGE = Pattern.compile("(\\d{1,6})(?:\\s*[-–]\\s*(\\d{1,6}))?");

	public static SheetChoice of(String numbers) {
		return new SheetChoice(false, numbers.strip());
	}

	/**
	 * The sheets in the order of the job; none means the bench.
	 *
	 * @throws IllegalArgumentException if a number is none, or the job has no such sheet; the message names it
	 */
	public List<Sheet> of(Job job) {
		List<Sheet> all = job.getSheets();
		if (bench) {
			return List.of();
		}
		if (numbers.isEmpty()) {
			return List.copyOf(all);
		}
		TreeSet<Integer> chosen = new TreeSet<>();
		for (String part : numbers.split("[,;]")) {
			Matcher range = RANGE.matcher(part.strip());
			if (!range.matches()) {
				throw new IllegalArgumentException(NLS.bind(Messages.SheetChoice_form, part.strip()));
			}
			int first = sheet(range.group(1), all.size());
			int last = range.group(2) == null ? first : sheet(range.group(2), all.size());
			if (last < first) {
				throw new IllegalArgumentException(NLS.bind(Messages.SheetChoice_backwards, part.strip()));
			}
			IntStream.rangeClosed(first, last).forEach(chosen::add);
		}
		return chosen.stream().map(number -> all.get(number - 1)).toList();
	}

	private static int sheet(String text, int count) {
		int number = Integer.parseInt(text);
		if (number < 1 || number > count) {
			throw new IllegalArgumentException(count == 0 ? Messages.SheetChoice_noSheets
					: NLS.bind(Messages.SheetChoice_noSuch, number, count));
		}
		return number;
	}
}
