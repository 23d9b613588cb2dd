package org.frisket.cli.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.Frisket;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.SampleJobs;
import org.frisket.typography.FontFace;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** A job that is made again months later, in a studio that is not what it was. */
class OrdersAgainVerbTest {

	private static final String FONT = "Liberation Sans";

	@TempDir
	private Path folder;
	private String out;
	private String err;

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
	}

	private int frisket(String... arguments) {
		List<String> all = new ArrayList<>(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream answers = new ByteArrayOutputStream();
		ByteArrayOutputStream complaints = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(answers, true, StandardCharsets.UTF_8),
				new PrintStream(complaints, true, StandardCharsets.UTF_8));
		out = answers.toString(StandardCharsets.UTF_8);
		err = complaints.toString(StandardCharsets.UTF_8);
		return status;
	}

	private void done(String... arguments) {
		assertEquals(0, frisket(arguments), () -> String.join(" ", arguments) + ": " + err + out);
	}

	private JsonObject json(String... arguments) {
		done(arguments);
		return JsonParser.parseString(out).getAsJsonObject();
	}

	/** A studio with a machine, two blades, a stock and a job of one word that is cut out of it. */
	private String ordered(FontFace face) throws Exception {
		done("settings", "machine", "add", "harbour", "--set", "name=Harbour cutter", "--set", "width=330mm", "--set",
				"height=330mm", "--set", "speed-most=100", "--set", "speed-most-means=100");
		done("settings", "tool", "add", "b1", "--kind", "blade", "--set", "name=Harbour blade", "--set", "offset=0.3mm");
		done("stock", "add", "--name", "Harbour white", "--id", "harbour-white", "--family", "card", "--weight", "216gsm",
				"--caliper", "0.3mm", "--colour", "white");
		Job job = Jobs.create("tag", "Ferry tag");
		job.setCustomer("Tern Bookshop");
		job.setQuantity(3);
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setStock("harbour-white");
		Wording wording = Jobs.addWording(layer, "Ferry", 20);
		wording.setFont(Jobs.font(face.family(), face.style(), face.digest(), null));
		Jobs.addOperation(wording, OperationKind.CUT);
		new StudioFolder(folder.resolve("studio")).openForWriting().keptFonts().keep(face);
		Path file = folder.resolve("tag.frjob");
		JobFile.save(job, file);
		done("orders", "import", file.toString());
		String number = out.strip();
		done("orders", "customer", "set", "Tern Bookshop", "--agreement", "ten percent off from 100 on");
		return number;
	}

	private byte[] cutFile(String number, String name) throws Exception {
		Path job = folder.resolve(name + ".frjob");
		done("orders", "export", number, "--out", job.toString());
		Path plt = folder.resolve(name + ".plt");
		assertTrue(frisket("export", job.toString(), "--machine", "harbour", "--out", plt.toString()) < 2, () -> err + out);
		return Files.readAllBytes(plt);
	}

	private void ran(String number, String job, String tool, String pressure) {
		done("settings", "run", "add", json("orders", "show", number, "--json").get("id").getAsString(), "--stock",
				"harbour-white", "--machine", "harbour", "--tool", tool, "--operation", "cut", "--exposure", "0.4mm", "--pressure",
				pressure, "--speed", "40", "--passes", "1", "--verdict", job, "--length", "900mm");
	}

	/** Another file under the same name: a font is a table that ends anywhere, so a byte more is another content. */
	private void otherFontOfThatName(FontFace face) throws Exception {
		byte[] bytes = face.bytes();
		byte[] other = java.util.Arrays.copyOf(bytes, bytes.length + 4);
		Path fonts = Files.createDirectories(folder.resolve("studio").resolve("fonts"));
		Files.write(fonts.resolve("other.ttf"), other);
	}

	@Test
	void sameBytesMonthsLaterAndTheNotesNameWhatChanged() throws Exception {
		FontFace face = SampleJobs.face(FONT);
		String number = ordered(face);
		ran(number, "through", "b1", "55");
		byte[] before = cutFile(number, "before");
		done("orders", "stage", number, "cut", "--anyway");
		String original = json("orders", "show", number, "--json").toString();

		otherFontOfThatName(face);
		done("stock", "set", "harbour-white", "--caliper", "0.35mm", "--colour", "cream");
		done("settings", "tool", "add", "b2", "--kind", "blade", "--set", "name=New blade", "--set", "offset=0.9mm");
		done("orders", "customer", "set", "Tern Bookshop", "--agreement", "nothing off");
		String other = json("orders", "add", "--title", "Another", "--json").get("number").getAsString();
		ran(other, "through", "b2", "80");

		JsonObject again = json("orders", "again", number, "--due", "2031-06-01", "--json");
		String repeat = again.get("number").getAsString();
		assertEquals("ordered", again.get("stage").getAsString());
		assertEquals("2031-06-01", again.get("due").getAsString());
		assertEquals(3, again.get("quantity").getAsInt());
		assertArrayEquals(before, cutFile(repeat, "after"), "the cut file");

		String notes = again.getAsJsonArray("notes").toString();
		assertTrue(note(again, "caliper").contains("0.35"), notes);
		assertTrue(note(again, "colour").contains("cream"), notes);
		assertTrue(note(again, "Agreement").contains("nothing off"), notes);
		assertTrue(note(again, "went well").contains("pressure 55"), notes);
		assertTrue(note(again, FONT).contains("kept"), notes);
		assertEquals("ordered", json("orders", "show", repeat, "--json").get("stage").getAsString());
		assertEquals(number, json("orders", "show", repeat, "--json").getAsJsonArray("repeats").get(0).getAsString());
		JsonObject untouched = json("orders", "show", number, "--json");
		assertEquals(repeat, untouched.getAsJsonArray("repeatedBy").get(0).getAsString());
		untouched.add("repeatedBy", new JsonArray());
		assertEquals(original, untouched.toString());
	}

	/** The note about something, as text. */
	private static String note(JsonObject again, String what) {
		for (JsonElement note : again.getAsJsonArray("notes")) {
			if (note.getAsJsonObject().get("what").getAsString().toLowerCase().contains(what.toLowerCase())) {
				return note.toString();
			}
		}
		return "";
	}

	@Test
	void fontThatIsGoneBlocksAndIsNamed() throws Exception {
		String number = ordered(SampleJobs.face(FONT));
		Path job = folder.resolve("gone.frjob");
		done("orders", "export", number, "--out", job.toString());
		Files.writeString(job, Files.readString(job).replaceAll("digest=\"[0-9a-f]{64}\"", "digest=\"" + "ab".repeat(32) + '"')
				.replace(FONT, "Harbour Roman"));
		done("orders", "import", job.toString(), "--again");
		String gone = out.strip();
		JsonObject again = json("orders", "again", gone, "--json");
		assertEquals("blocking", again.getAsJsonArray("notes").get(0).getAsJsonObject().get("severity").getAsString());
		assertTrue(note(again, "Harbour Roman").contains("not at hand"), again.toString());
	}

	@Test
	void unknownNumberIsRefusedAndNothingIsOrdered() {
		assertEquals(2, frisket("orders", "again", "17"));
		assertTrue(err.contains("17"), err);
		assertEquals(0, json("orders", "list", "--json").getAsJsonArray("jobs").size());
		done("orders", "add", "--title", "Tags");
		assertEquals(2, frisket("orders", "again", "1", "--quantity", "0"));
		assertTrue(err.contains("quantity"), err);
		assertFalse(out.contains("2"), out);
	}

	@Test
	void reportIsWrittenWithItsChart() throws Exception {
		done("orders", "add", "--title", "Tags");
		Path pdf = folder.resolve("stages.pdf");
		done("orders", "report", "stages", "--out", pdf.toString());
		byte[] bytes = Files.readAllBytes(pdf);
		assertEquals("%PDF", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
		done("orders", "report", "stages", "--out", pdf.toString());
		assertArrayEquals(bytes, Files.readAllBytes(pdf), "the same on the same day");
		assertEquals(2, frisket("orders", "report", "stages", "--out", folder.resolve("x.txt").toString()));
		assertEquals(2, frisket("orders", "report", "weather"));
		assertTrue(err.contains("on-time-weeks"), err);
	}
}
