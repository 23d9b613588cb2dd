package org.frisket.cli.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.model.WholeFile;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;

import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;

/** The printer that somebody names: one that the studio keeps, or one in a file as {@code frisket register --json} writes it. */
final class PrinterChoice {

	private static final String ENDING = ".json";

	private PrinterChoice() {
	}

	/** @param named a name, or a file that ends in .json */
	static PrinterProfile of(String named) throws Refusal {
		return named.toLowerCase(Locale.ROOT).endsWith(ENDING) ? file(Path.of(named)) : kept(named);
	}

	private static PrinterProfile kept(String name) throws Refusal {
		try {
			StudioFolder studio = Studio.folder();
			PrinterProfiles profiles = new PrinterProfiles(studio.preferences());
			Optional<PrinterProfile> profile = profiles.named(name);
			return profile.orElseThrow(() -> new Refusal("--printer-profile: the studio has no printer “" + name
					+ "”; measure one with frisket register --keep-printer"));
		} catch (IOException e) {
			throw new Refusal("--printer-profile: " + e.getMessage());
		}
	}

	/** The object itself, or one that has it as its {@code printer}; skew in degrees. */
	private static PrinterProfile file(Path file) throws Refusal {
		try {
			JsonObject object = JsonParser.parseString(Files.readString(file)).getAsJsonObject();
			if (object.has("printer")) {
				object = object.getAsJsonObject("printer");
			}
			return new PrinterProfile(object.get("name").getAsString(), object.get("scaleX").getAsDouble(),
					object.get("scaleY").getAsDouble(), Math.toRadians(object.get("skew").getAsDouble()),
					LocalDate.parse(object.get("measured").getAsString()), object.get("marks").getAsInt());
		} catch (IOException e) {
			throw new Refusal("--printer-profile: “" + file + "”: " + WholeFile.reason(e));
		} catch (NullPointerException | ClassCastException | IllegalStateException | JsonParseException | DateTimeException
				| NumberFormatException e) {
			throw new Refusal("--printer-profile: “" + file
					+ "” is no profile; it has name, scaleX, scaleY, skew in degrees, measured (a day) and marks (how many)");
		} catch (IllegalArgumentException e) {
			throw new Refusal("--printer-profile: “" + file + "”: " + e.getMessage());
		}
	}
}
