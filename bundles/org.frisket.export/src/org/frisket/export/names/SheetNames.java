package org.frisket.export.names;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Sheet;

/**
 * The names of the files of one job.
 *
 * @param job     whose they are
 * @param machine id of the machine they are for
 * @param ending  of the format, without the dot
 */
public record SheetNames(Job job, String machine, String ending) {

	/**
	 * A name with its ending for each sheet; one for the bench if there are none.
	 *
	 * @throws IllegalArgumentException if the pattern gives a sheet no name, or two the same; the message says which and why
	 */
	public List<String> of(NamePattern pattern, List<Sheet> sheets) {
		if (sheets.isEmpty()) {
			return List.of(withEnding(pattern.name(values(null))));
		}
		if (sheets.size() > 1 && !pattern.has(NameField.SHEET)) {
			throw new IllegalArgumentException(NLS.bind(Messages.SheetNames_noSheet,
					new Object[] { pattern, sheets.size(), "{" + NameField.SHEET.word() + "}" }));
		}
		List<String> names = new ArrayList<>();
		Map<String, Sheet> seen = new HashMap<>();
		for (Sheet sheet : sheets) {
			String name = withEnding(pattern.name(values(sheet)));
			// cards and Windows make no difference between upper and lower case
			Sheet other = seen.put(name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT), sheet);
			if (other != null) {
				throw new IllegalArgumentException(NLS.bind(Messages.SheetNames_same,
						new Object[] { pattern, number(other), number(sheet), name }));
			}
			names.add(name);
		}
		return names;
	}

	private String withEnding(String name) {
		return ending.isEmpty() ? name : name + "." + ending;
	}

	private int number(Sheet sheet) {
		return job.getSheets().indexOf(sheet) + 1;
	}

	private Map<NameField, String> values(Sheet sheet) {
		Map<NameField, String> values = new EnumMap<>(NameField.class);
		values.put(NameField.TITLE, text(job.getTitle()));
		values.put(NameField.NUMBER, text(job.getNumber()));
		values.put(NameField.JOB, text(job.getNumber()).isBlank() ? text(job.getTitle()) : job.getNumber());
		values.put(NameField.CUSTOMER, text(job.getCustomer()));
		values.put(NameField.DUE, job.getDue() == null ? "" : job.getDue().toString());
		values.put(NameField.MACHINE, machine);
		values.put(NameField.FORMAT, ending);
		if (sheet != null) {
			String all = Integer.toString(job.getSheets().size());
			values.put(NameField.SHEETS, all);
			values.put(NameField.SHEET, ("%0" + all.length() + "d").formatted(number(sheet)));
			values.put(NameField.STOCK, text(sheet.getStock()));
			values.put(NameField.COLOUR, text(sheet.getColour()).replace("#", ""));
		}
		return values;
	}

	private static String text(String text) {
		return Objects.requireNonNullElse(text, "");
	}
}
