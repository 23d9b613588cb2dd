package org.frisket.export.gcode;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.machine.Digits;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.trials.Settings;

/** Words that the studio says for its machine, with places for what differs from leg to leg. */
final class Words {

	private static final List<String> PLACES = List.of("{tool}", "{pressure}", "{exposure}");
	private static final Pattern PLACE = Pattern.compile("\\{[^}]*\\}?");
	/** Letters with numbers, comments, and whatever parameters a controller has; no line of its own may hide in it. */
	private static final Pattern PRINTABLE = Pattern.compile("[ -~]*");

	private final List<String> lines = new ArrayList<>();

	/**
	 * Lines with | between them; in them {tool}, {pressure}, {exposure}.
	 *
	 * @param usual where the option says nothing
	 * @throws IOException if another place is named, or a controller could not read it
	 */
	static Words of(OptionValues options, Option option, String usual) throws IOException {
		String text = options.text(option);
		return new Words(option.name(), text.isBlank() ? usual : text);
	}

	private Words(String option, String text) throws IOException {
		if (!PRINTABLE.matcher(text).matches()) {
			throw new IOException(NLS.bind(Messages.Words_notPlain, option));
		}
		for (String line : text.split("\\|")) {
			if (!line.isBlank()) {
				lines.add(line.strip());
			}
		}
		for (Matcher place = PLACE.matcher(text); place.find();) {
			if (!PLACES.contains(place.group())) {
				throw new IOException(NLS.bind(Messages.Words_noSuchPlace,
						new Object[] { option, place.group(), String.join(", ", PLACES) }));
			}
		}
	}

	/** @param settings of the leg; null before any, when they are all 0 */
	void put(Blocks out, int tool, Settings settings) throws IOException {
		for (String line : lines) {
			out.put(line.indexOf('{') < 0 ? line
					: line.replace("{tool}", Integer.toString(tool))
							.replace("{pressure}", settings == null ? "0" : Digits.shortest(settings.pressure(), 3))
							.replace("{exposure}", settings == null ? "0" : Digits.shortest(settings.exposure(), 3)));
		}
	}
}
