package org.frisket.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.CancellationException;

import javax.xml.parsers.DocumentBuilderFactory;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class PdfExporterTest extends ExporterContract {

	@Override
	protected Exporter exporter() {
		return new PdfExporter();
	}

	static byte[] written(Handoff handoff, Map<String, String> options) throws IOException {
		PdfExporter exporter = new PdfExporter();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter.export(handoff, OptionValues.of(exporter.options(), options), Monitor.NONE, out);
		return out.toByteArray();
	}

	static byte[] written(Job job, Map<String, String> options) throws IOException {
		return written(Handoff.of(SampleJobs.prepared(job)), options);
	}

	@Test
	void noClockIsAsked() throws Exception {
		byte[] first = written(SampleJobs.giftTag(), Map.of("label", "with"));
		Thread.sleep(1100); // a clock that was asked would show another second
		assertArrayEquals(first, written(SampleJobs.giftTag(), Map.of("label", "with")));
		String text = new String(first, StandardCharsets.ISO_8859_1);
		assertFalse(text.contains("Date"), "nobody knows when the job was handed out");
	}

	@Test
	void documentsThatDifferHaveIdsThatDo() throws Exception {
		String wide = id(written(SampleJobs.outline("M0 0H20V10H0Z", OperationKind.CUT), Map.of()));
		assertEquals(wide, id(written(SampleJobs.outline("M0 0H20V10H0Z", OperationKind.CUT), Map.of())));
		assertFalse(wide.equals(id(written(SampleJobs.outline("M0 0H21V10H0Z", OperationKind.CUT), Map.of()))));
	}

	private static String id(byte[] pdf) {
		String text = new String(pdf, StandardCharsets.ISO_8859_1);
		int at = text.indexOf("/ID");
		assertTrue(at >= 0, "a document has an id");
		return text.substring(at, at + 40);
	}

	@Test
	void titlesCannotBreakOutOfTheDescription() throws Exception {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		job.setTitle("</rdf:li>]]><x/> & “Fähre”\u0001\uFFFF");
		job.setNumber("2026-117");
		String text = new String(written(job, Map.of()), StandardCharsets.UTF_8);
		String packet = text.substring(text.indexOf("<x:xmpmeta"), text.indexOf("<?xpacket end"));
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setNamespaceAware(true);
		Document xml = factory.newDocumentBuilder().parse(new org.xml.sax.InputSource(new java.io.StringReader(packet)));
		String dc = "http://purl.org/dc/elements/1.1/";
		assertEquals("</rdf:li>]]><x/> & “Fähre”  ", xml.getElementsByTagNameNS(dc, "title").item(0).getTextContent());
		assertEquals("Job 2026-117", xml.getElementsByTagNameNS(dc, "description").item(0).getTextContent());
	}

	@Test
	void cancellingStopsIt() {
		PdfExporter exporter = new PdfExporter();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		assertThrows(CancellationException.class,
				() -> exporter.export(Handoff.of(SampleJobs.prepared(SampleJobs.giftTag())),
						OptionValues.defaults(exporter.options()), () -> true, out));
		assertEquals(0, out.size());
	}

	@Test
	void theStreamStaysOpen() throws IOException {
		boolean[] closed = new boolean[1];
		PdfExporter exporter = new PdfExporter();
		exporter.export(Handoff.of(SampleJobs.prepared(SampleJobs.giftTag())), OptionValues.defaults(exporter.options()),
				Monitor.NONE, new ByteArrayOutputStream() {
					@Override
					public void close() {
						closed[0] = true;
					}
				});
		assertFalse(closed[0], "it is the caller's");
	}
}
