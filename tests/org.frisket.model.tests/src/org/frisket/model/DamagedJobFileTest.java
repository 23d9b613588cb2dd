package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DamagedJobFileTest {

	private static final String START = """
			<?xml version="1.0" encoding="UTF-8"?>
			<frisket:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
			    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:frisket="urn:frisket:job:1" id="j">
			  <layers id="l1">
			""";
	private static final String END = """
			  </layers>
			</frisket:Job>
			""";

	private static UnreadableJobException refused(byte[] content) {
		return assertThrows(UnreadableJobException.class,
				() -> JobFile.load(new ByteArrayInputStream(content), "order.frjob"));
	}

	private static UnreadableJobException refused(String content) {
		return refused(content.getBytes(StandardCharsets.UTF_8));
	}

	private static void assertRefused(int line, String reason, String content) {
		UnreadableJobException e = refused(content);
		assertEquals(reason, e.reason());
		assertEquals(line, e.line(), e::getMessage);
		assertTrue(e.getMessage().startsWith("order.frjob" + (line > 0 ? ", line " + line : "") + ": ")
				|| e.getMessage().startsWith("order.frjob, line " + line + ", column "), e::getMessage);
	}

	@Test
	void cutOffAnywhereSaysSoAndWhere() throws IOException {
		byte[] whole = JobFile.toBytes(Samples.banner());
		// The last line feed may go without loss.
		for (int length = 1; length < whole.length - 1; length += 5) {
			byte[] part = Arrays.copyOf(whole, length);
			UnreadableJobException e = refused(part);
			long lines = new String(part, StandardCharsets.UTF_8).chars().filter(c -> c == '\n').count() + 1;
			String message = length + ": " + e.getMessage();
			assertEquals("the file is cut off in the middle", e.reason(), message);
			assertEquals(lines, e.line(), message);
			assertTrue(e.getMessage().startsWith("order.frjob, line " + lines), message);
		}
	}

	@Test
	void emptyFileSaysSo() {
		assertEquals("order.frjob: the file is empty", refused("").getMessage());
	}

	@Test
	void otherFilesAreNotTakenForJobs() {
		assertRefused(1, "this is not a job file: it is not XML", "%PDF-1.7\n1 0 obj\n");
		assertRefused(1, "this is not a job file: it starts with <svg>",
				"<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0\"/></svg>");
		assertRefused(2, "this is not a job file: it starts with <frisket:Layer>",
				"<?xml version='1.0'?>\n<frisket:Layer xmlns:frisket=\"urn:frisket:job:1\"/>");
		assertRefused(1, "this is not a job file: it starts with <Job>", "<Job/>");
		assertRefused(1, "this is not a job file: it starts with <frisket:Job>",
				"<frisket:Job xmlns:frisket=\"urn:frisket:job:one\"/>");
	}

	@Test
	void newerVersionIsNamed() {
		assertRefused(1, "this job was written by a newer Frisket (file format 7; this one reads up to 1)",
				"<frisket:Job xmlns:frisket=\"urn:frisket:job:7\" glaze=\"satin\"><kiln/></frisket:Job>");
	}

	@Test
	void unknownKindOfElementIsNamed() {
		assertRefused(5, "an element is a 'frisket:Stencil', which this Frisket does not know; "
				+ "the job may have been written by a newer one",
				START + "    <elements xsi:type=\"frisket:Stencil\" id=\"e1\"/>\n" + END);
		assertRefused(5, "an element does not say what it is (xsi:type)", START + "    <elements id=\"e1\"/>\n" + END);
		for (String type : new String[] { "frisket:Element", "frisket:Layer", "frisket:Stage", "x:Outline" }) {
			String element = "    <elements xsi:type=\"" + type + "\" id=\"e1\"/>\n";
			assertEquals(5, refused(START + element + END).line(), type);
		}
	}

	@Test
	void danglingReferenceIsNamed() {
		assertRefused(6, "it refers to 'e9', but nothing in the job has that id", START
				+ "    <elements xsi:type=\"frisket:Outline\" id=\"e1\"/>\n"
				+ "    <elements xsi:type=\"frisket:Mat\" id=\"e2\" behind=\"e1 e9\"/>\n" + END);
	}

	@Test
	void referenceToTheWrongKindIsRefused() {
		assertRefused(5, "what it gives as behind cannot stand there",
				START + "    <elements xsi:type=\"frisket:Mat\" id=\"e2\" behind=\"l1\"/>\n" + END);
	}

	@Test
	void valuesOfTheWrongKindAreNamedWithTheirLine() {
		String wording = START + "    <elements xsi:type=\"frisket:Wording\" id=\"e1\" ";
		assertRefused(5, "height is '12,5', which is not a number", wording + "height=\"12,5\"/>\n" + END);
		assertRefused(5, "height is 'NaN', which is not a number", wording + "height=\"NaN\"/>\n" + END);
		assertRefused(5, "touch is '1e999', which is not a number", wording + "touch=\"1e999\"/>\n" + END);
		assertRefused(5, "transform is '1 0 0 1', which is not six numbers parted by blanks",
				wording + "transform=\"1 0 0 1\"/>\n" + END);
		assertRefused(5, "alignment is 'middle', which is none of left, centre, right, justify",
				wording + "alignment=\"middle\"/>\n" + END);
		assertRefused(1, "quantity is 'many', which is not a whole number",
				"<f:Job xmlns:f=\"urn:frisket:job:1\" quantity=\"many\"/>");
		assertRefused(1, "due is '17/05/2031', which is not a day such as 2031-05-17",
				"<f:Job xmlns:f=\"urn:frisket:job:1\" due=\"17/05/2031\"/>");
		assertRefused(2, "at is 'noon', which is not a time such as 2031-05-17T09:30:00Z",
				"<f:Job xmlns:f=\"urn:frisket:job:1\">\n<history at=\"noon\"/></f:Job>");
	}

	@Test
	void sameIdTwiceIsNamed() {
		assertRefused(6, "the id 'e1' was already given in line 5", START
				+ "    <elements xsi:type=\"frisket:Outline\" id=\"e1\"/>\n"
				+ "    <elements xsi:type=\"frisket:Outline\" id=\"e1\"/>\n" + END);
		assertRefused(5, "'a b' cannot be an id",
				START + "    <elements xsi:type=\"frisket:Outline\" id=\"a b\"/>\n" + END);
	}

	@Test
	void entitiesAreRefused(@TempDir Path folder) throws IOException {
		Path secret = Files.writeString(folder.resolve("secret.txt"), "do not read me");
		String job = "<f:Job xmlns:f=\"urn:frisket:job:1\" title=\"t\"><notes>&x;</notes></f:Job>";
		assertRefused(1, "it declares a document type, which a job file must not",
				"<!DOCTYPE x [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>\n" + job);
		assertRefused(1, "it declares a document type, which a job file must not",
				"<!DOCTYPE x SYSTEM \"http://198.51.100.1/x.dtd\">\n" + job);
		StringBuilder bomb = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 \"ha\">");
		for (int i = 1; i < 40; i++) {
			bomb.append("<!ENTITY a" + i + " \"&a" + (i - 1) + ";&a" + (i - 1) + ";\">");
		}
		assertRefused(1, "it declares a document type, which a job file must not",
				bomb + "]>\n" + job.replace("&x;", "&a39;"));
	}

	@Test
	void pathsOfWordingsLeadToOutlines() {
		String wording = START + "    <elements xsi:type=\"frisket:Wording\" id=\"e1\" path=\"";
		assertTrue(refused(wording + "e9\"/>\n" + END).getMessage().contains("e9"));
		String mat = "    <elements xsi:type=\"frisket:Mat\" id=\"e2\" behind=\"e1\"/>\n";
		UnreadableJobException wrong = refused(wording + "e2\"/>\n" + mat + END);
		assertTrue(wrong.getMessage().contains("path"), wrong.getMessage());
		UnreadableJobException outside = refused(wording + "http://198.51.100.1/x.frjob#e1\"/>\n" + END);
		assertTrue(outside.reason().contains("outside the file"), outside.getMessage());
	}

	@Test
	void otherFilesAreNeverReachedFor() {
		String mat = START + "    <elements xsi:type=\"frisket:Mat\" id=\"e1\"";
		assertRefused(5, "it refers to something outside the file (href)",
				mat + "><behind href=\"http://198.51.100.1/x.frjob#e1\"/></elements>\n" + END);
		assertRefused(1, "it refers to something outside the file (schemaLocation)",
				"<f:Job xmlns:f=\"urn:frisket:job:1\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
						+ " xsi:schemaLocation=\"urn:frisket:job:1 http://198.51.100.1/x.ecore\"/>");
		String other = " behind=\"frisket:Outline http://198.51.100.1/x.frjob#e1\"/>\n";
		UnreadableJobException e = refused(mat + other + END);
		assertTrue(e.reason().contains("outside the file"), e.getMessage());
	}

	@Test
	void deepNestingIsRefused() {
		assertRefused(1, "more than 64 elements are nested in each other", "<f:Job xmlns:f=\"urn:frisket:job:1\">"
				+ "<a>".repeat(100_000) + "</a>".repeat(100_000) + "</f:Job>");
	}

	@Test
	void wrongBytesAreNamedWithTheirLine() {
		byte[] content = (START + "    <elements xsi:type=\"frisket:Wording\" id=\"e1\" text=\"Caf#\"/>\n" + END)
				.getBytes(StandardCharsets.UTF_8);
		for (int i = 0; i < content.length; i++) {
			if (content[i] == '#') {
				content[i] = (byte) 0xE9;
			}
		}
		UnreadableJobException e = refused(content);
		assertEquals("a letter is damaged: the bytes are not UTF-8", e.reason());
		assertEquals(5, e.line());
	}

	@Test
	void missingFileSaysSo(@TempDir Path folder) {
		Path file = folder.resolve("none.frjob");
		assertEquals(file + ": there is no such file or folder",
				assertThrows(UnreadableJobException.class, () -> JobFile.load(file)).getMessage());
		assertThrows(UnreadableJobException.class, () -> JobFile.load(folder));
	}

	@Test
	void failingStreamSaysSo() {
		InputStream broken = new InputStream() {

			@Override
			public int read() throws IOException {
				throw new IOException("the stick was pulled out");
			}
		};
		assertEquals("stick: it cannot be read: the stick was pulled out",
				assertThrows(UnreadableJobException.class, () -> JobFile.load(broken, "stick")).getMessage());
	}

	/** Whatever the damage: a job, or the one exception with the file's name. */
	@Test
	void randomDamageNeverEscapes() throws IOException {
		byte[] whole = JobFile.toBytes(Samples.banner());
		Random random = new Random(20310517);
		int refused = 0;
		for (int run = 0; run < 600; run++) {
			byte[] damaged = whole.clone();
			for (int i = random.nextInt(4); i >= 0; i--) {
				damaged[random.nextInt(damaged.length)] = (byte) (random.nextBoolean() ? random.nextInt(256)
						: "<>\"'/= &;0x:".charAt(random.nextInt(12)));
			}
			try {
				JobFile.load(new ByteArrayInputStream(damaged), "order.frjob");
			} catch (UnreadableJobException e) {
				refused++;
				assertTrue(e.getMessage().startsWith("order.frjob"), e.getMessage());
				assertTrue(!e.reason().contains("Exception"), e.getMessage());
			}
		}
		assertTrue(refused > 200, "refused " + refused);
	}
}
