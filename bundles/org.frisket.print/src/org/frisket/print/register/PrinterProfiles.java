package org.frisket.print.register;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.osgi.util.NLS;
import org.frisket.studio.StudioPreferences;

/**
 * The studio's printers by name, among its preferences: a line for each, such as
 * {@code Front desk;1.002;0.9985;0.001;2026-11-30;4}: name, scales along x and y, skew in radians, day, marks.
 */
public final class PrinterProfiles {

	private static final String KEY = "print.printers";
	private static final int FIELDS = 6;

	private final StudioPreferences preferences;

	public PrinterProfiles(StudioPreferences preferences) {
		this.preferences = preferences;
	}

	/** By name. @throws IOException if the preferences cannot be read, or a line of them is no profile; says which */
	public TreeMap<String, PrinterProfile> all() throws IOException {
		TreeMap<String, PrinterProfile> profiles = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
		for (String line : preferences.get(KEY).orElse("").lines().toList()) {
			PrinterProfile profile = parse(line);
			profiles.put(profile.name(), profile);
		}
		return profiles;
	}

	public Optional<PrinterProfile> named(String name) throws IOException {
		return Optional.ofNullable(all().get(name.strip()));
	}

	/** Keeps it in the place of one of the same name. */
	public void keep(PrinterProfile profile) throws IOException {
		TreeMap<String, PrinterProfile> profiles = all();
		profiles.remove(profile.name());
		profiles.put(profile.name(), profile);
		write(profiles);
	}

	/**
	 * Gives a printer another name, whatever is kept of it by now; nothing is done for one that is no more.
	 *
	 * @throws IllegalArgumentException with a sentence, if the name is none, or another printer has it
	 */
	public void rename(String name, String other) throws IOException {
		TreeMap<String, PrinterProfile> profiles = all();
		PrinterProfile profile = profiles.remove(name.strip());
		if (profile != null) {
			PrinterProfile renamed = profile.named(other);
			if (profiles.containsKey(renamed.name())) {
				throw new IllegalArgumentException(NLS.bind(Messages.PrinterProfiles_taken, renamed.name()));
			}
			profiles.put(renamed.name(), renamed);
			write(profiles);
		}
	}

	/** Whether there was one. */
	public boolean drop(String name) throws IOException {
		TreeMap<String, PrinterProfile> profiles = all();
		boolean there = profiles.remove(name.strip()) != null;
		if (there) {
			write(profiles);
		}
		return there;
	}

	private void write(TreeMap<String, PrinterProfile> profiles) throws IOException {
		StringBuilder text = new StringBuilder();
		profiles.values().forEach(p -> text.append(text.isEmpty() ? "" : "\n").append(p.name()).append(';').append(p.scaleX())
				.append(';').append(p.scaleY()).append(';').append(p.skew()).append(';').append(p.measured()).append(';')
				.append(p.marks()));
		preferences.put(KEY, text.toString());
	}

	private static PrinterProfile parse(String line) throws IOException {
		String[] fields = line.split(";", -1);
		try {
			if (fields.length == FIELDS) {
				return new PrinterProfile(fields[0], Double.parseDouble(fields[1]), Double.parseDouble(fields[2]),
						Double.parseDouble(fields[3]), LocalDate.parse(fields[4]), Integer.parseInt(fields[5]));
			}
		} catch (DateTimeException | IllegalArgumentException unreadable) {
			throw new IOException(NLS.bind(Messages.PrinterProfiles_line, KEY, line), unreadable);
		}
		throw new IOException(NLS.bind(Messages.PrinterProfiles_line, KEY, line));
	}
}
