package org.frisket.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

import org.frisket.cli.Frisket;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Register marks on the command line; the figures are those of {@code RegistrationTest}, worked out apart from the code. */
class RegisterVerbTest {

	private static final String DESIGN = "10,10;290,10;290,190;10,190";
	private static final String MEASURED = "11.48,9.29;291.94,11.79;290.43,192.16;9.80,189.65";

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
		JsonObject json() {
			return JsonParser.parseString(out).getAsJsonObject();
		}
	}

	private static Answer register(String... arguments) {
		String[] all = new String[arguments.length + 1];
		all[0] = "register";
		System.arraycopy(arguments, 0, all, 1, arguments.length);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(all, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private static void assertRefused(String reason, String... arguments) {
		Answer answer = register(arguments);
		assertEquals(2, answer.status(), answer.out());
		assertTrue(answer.err().contains(reason), answer.err());
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
		assertEquals("", answer.out());
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	@Test
	void fourMarksAreFitted() {
		Answer answer = register("--design", DESIGN, "--measured", MEASURED, "--fit", "affine", "--json");
		assertEquals(0, answer.status(), answer.err());
		JsonObject json = answer.json();
		double[] rows = { 1.001946429, -0.008861111, 1.506646825, 0.008946429, 1.002027778, -0.822242063, 0, 0, 1 };
		JsonArray matrix = json.getAsJsonArray("matrix");
		assertEquals(rows.length, matrix.size());
		for (int i = 0; i < rows.length; i++) {
			assertEquals(rows[i], matrix.get(i).getAsDouble(), 5e-10);
		}
		assertEquals(0.042573, json.get("rms").getAsDouble(), 5e-7);
		assertEquals(2, json.get("redundancy").getAsInt());
		assertEquals(0.642857, json.get("conditioning").getAsDouble(), 5e-7);
		JsonObject similar = register("--design", DESIGN, "--measured", MEASURED, "--json").json();
		assertEquals("similarity", similar.get("fit").getAsString());
		assertEquals(0.043499, similar.get("rms").getAsDouble(), 5e-7);
		assertEquals(0.051434, similar.get("max").getAsDouble(), 5e-7);
		assertEquals(1.002009934, similar.get("scale").getAsDouble(), 5e-10);
		assertEquals(0.510145, similar.get("rotation").getAsDouble(), 5e-7);
		JsonArray first = similar.getAsJsonArray("residuals").get(0).getAsJsonArray();
		assertEquals(0.0404, first.get(0).getAsDouble(), 5e-5);
		assertEquals(-0.0062, first.get(1).getAsDouble(), 5e-5);
	}

	@Test
	void unitsMayBeMixedAndPlacesAskedFor() {
		JsonObject json = register("--design", "10mm,1cm;290,10;290,19cm;10,190", "--measured", MEASURED, "--sigma", "0.1mm",
				"--at", "150,100;0,0", "--json").json();
		JsonObject middle = json.getAsJsonArray("places").get(0).getAsJsonObject();
		assertEquals(150.9125, middle.getAsJsonArray("mapped").get(0).getAsDouble(), 1e-9);
		assertEquals(0.05, middle.getAsJsonArray("error").get(0).getAsDouble(), 5e-4);
		JsonObject corner = json.getAsJsonArray("places").get(1).getAsJsonObject();
		assertEquals(0.0737, corner.getAsJsonArray("error").get(1).getAsDouble(), 5e-4);
		Answer text = register("--design", DESIGN, "--measured", MEASURED, "--at", "0,0");
		assertTrue(text.out().contains("0.043 mm rms") && text.out().contains("standard error"), text.out());
	}

	@Test
	void lengthsDoInsteadOfPlaces() {
		Answer answer = register("--design", DESIGN, "--lengths",
				"1-2=280.84;2-3=180.54;3-4=281.12;4-1=180.54;1-3=333.95;2-4=333.92", "--fit", "affine", "--json");
		assertEquals(0, answer.status(), answer.err());
		assertEquals(1.0035, answer.json().get("scaleX").getAsDouble(), 1e-3);
		assertEquals(1, answer.json().getAsJsonObject("lengths").get("redundancy").getAsInt());
		assertRefused("need 5 lengths, not 2", "--design", DESIGN, "--lengths", "1-2=280;2-3=180");
	}

	@Test
	void mixedUpMarksAreBlockedButToldAllTheSame() {
		String shifted = "291.94,11.79;290.43,192.16;9.80,189.65;11.48,9.29";
		Answer answer = register("--design", DESIGN, "--measured", shifted, "--json");
		assertEquals(1, answer.status(), answer.err());
		assertEquals(9, answer.json().getAsJsonArray("matrix").size());
		JsonObject finding = answer.json().getAsJsonArray("findings").get(0).getAsJsonObject();
		assertEquals("marks-mispaired", finding.get("id").getAsString());
		assertTrue(finding.get("message").getAsString().contains("4, 1, 2, 3"));
		Answer mirrored = register("--design", "10,10;290,10;290,190;60,190", "--measured", "290,10;10,10;10,190;240,190");
		assertEquals(1, mirrored.status());
		assertTrue(mirrored.out().contains("blocking: The sheet is mirrored"), mirrored.out());
	}

	@Test
	void thePrinterIsKept() throws IOException {
		Path studio = folder.resolve("studio");
		Answer answer = register("--design", DESIGN, "--measured", MEASURED, "--fit", "affine", "--keep-printer",
				"Front desk", "--studio", studio.toString());
		assertEquals(0, answer.status(), answer.err());
		PrinterProfile kept = new PrinterProfiles(new StudioFolder(studio).preferences()).named("Front desk").orElseThrow();
		assertEquals(1.001986, kept.scaleX(), 1e-6);
		assertEquals(4, kept.marks());
		assertRefused("affine fit", "--design", DESIGN, "--measured", MEASURED, "--keep-printer", "Desk", "--studio",
				studio.toString());
	}

	@Test
	void whatCannotBeReadOrFittedIsRefused() {
		assertRefused("either by --measured or by --lengths", "--design", DESIGN);
		assertRefused("“10” is no place", "--design", "10;20,30", "--measured", MEASURED);
		assertRefused("unknown unit", "--design", "10ell,5;20,30", "--measured", MEASURED);
		assertRefused("is not a length", "--design", "10,x;20,30", "--measured", MEASURED);
		assertRefused("no length between marks", "--design", DESIGN, "--lengths", "280");
		assertRefused("4 designed marks, but 2 measured", "--design", DESIGN, "--measured", "1,1;2,2");
		assertRefused("on a line", "--design", "0,0;100,0;200,0;300,1", "--measured", MEASURED, "--fit", "affine");
		assertRefused("--fit", "--design", DESIGN, "--measured", MEASURED, "--fit", "bent");
	}
}
