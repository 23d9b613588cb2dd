package org.frisket.print.output;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.export.names.NamePattern;
import org.frisket.print.register.PrinterProfile;
import org.frisket.studio.StudioPreferences;

/**
 * What was chosen when sheets were printed last, among the preferences of the studio.
 *
 * @param options  how they are printed; the printer is kept by its name
 * @param printer  name of its profile; empty for none
 * @param format   id of the format that is cut by; empty while none was chosen
 * @param folder   the files were written to; empty while there is none
 * @param names    the pattern by which they are named
 */
public record PrintChoices(PrintOptions options, String printer, String format, String folder, String names) {

	public static final PrintChoices USUAL = new PrintChoices(PrintOptions.USUAL, "", "", "", NamePattern.USUAL);

	private static final String BLEED = "print.bleed";
	private static final String KNOCK_OUT = "print.knockOut";
	private static final String TURN = "print.turn";
	private static final String CODE = "print.code";
	private static final String RULER = "print.ruler";
	private static final String STEPS = "print.steps";
	private static final String PRINTER = "print.printer";
	private static final String FORMAT = "print.cutFormat";
	private static final String FOLDER = "print.folder";
	private static final String NAMES = "print.names";

	/**
	 * What is missing or cannot be read is as usual: a choice is soon made again. @throws IOException if nothing can
	 * be read
	 */
	public static PrintChoices kept(StudioPreferences preferences) throws IOException {
		PrintOptions usual = PrintOptions.USUAL;
		PrintOptions options;
		try {
			options = new PrintOptions(Double.parseDouble(preferences.get(BLEED).orElse(Double.toString(usual.bleed()))),
					is(preferences, KNOCK_OUT, usual.knockOut()),
					TurnEdge.valueOf(preferences.get(TURN).orElse(usual.turn().name()).toUpperCase(Locale.ROOT)),
					is(preferences, CODE, usual.code()), is(preferences, RULER, usual.ruler()),
					is(preferences, STEPS, usual.steps()), Optional.empty());
		} catch (IllegalArgumentException unreadable) {
			options = usual;
		}
		return new PrintChoices(options, preferences.get(PRINTER).orElse(""), preferences.get(FORMAT).orElse(""),
				preferences.get(FOLDER).orElse(""), preferences.get(NAMES).orElse(NamePattern.USUAL));
	}

	private static boolean is(StudioPreferences preferences, String key, boolean usual) throws IOException {
		return preferences.get(key).map(Boolean::parseBoolean).orElse(usual);
	}

	public void keep(StudioPreferences preferences) throws IOException {
		Map<String, String> values = new LinkedHashMap<>();
		values.put(BLEED, Double.toString(options.bleed()));
		values.put(KNOCK_OUT, Boolean.toString(options.knockOut()));
		values.put(TURN, options.turn().name().toLowerCase(Locale.ROOT));
		values.put(CODE, Boolean.toString(options.code()));
		values.put(RULER, Boolean.toString(options.ruler()));
		values.put(STEPS, Boolean.toString(options.steps()));
		values.put(PRINTER, options.printer().map(PrinterProfile::name).orElse(""));
		values.put(FORMAT, format);
		values.put(FOLDER, folder);
		values.put(NAMES, names);
		preferences.putAll(values);
	}
}
