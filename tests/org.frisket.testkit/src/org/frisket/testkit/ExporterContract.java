package org.frisket.testkit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.junit.jupiter.api.Test;

/** What every exporter has to keep. Extend it and say which exporter is meant. */
public abstract class ExporterContract {

	/** A new exporter, as the extension point makes one. */
	protected abstract Exporter exporter();

	protected final byte[] exported(Job job) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		Exporter exporter = exporter();
		assertDoesNotThrow(() -> exporter.export(Handoff.of(SampleJobs.prepared(job)), OptionValues.defaults(exporter.options()),
				Monitor.NONE, out));
		return out.toByteArray();
	}

	@Test
	void optionNamesAreUniqueAndDefaultsAreValid() {
		List<Option> options = exporter().options();
		Set<String> names = new HashSet<>();
		options.forEach(option -> assertTrue(names.add(option.name()), option.name()));
		assertDoesNotThrow(() -> OptionValues.defaults(options));
		options.forEach(option -> assertFalse(option.description().isBlank(), option.name()));
	}

	@Test
	void sameJobGivesSameBytes() {
		assertArrayEquals(exported(SampleJobs.giftTag()), exported(SampleJobs.giftTag()));
	}

	@Test
	void differentJobsGiveDifferentBytes() {
		assertFalse(Arrays.equals(exported(SampleJobs.giftTag()),
				exported(SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT))));
	}

	@Test
	void emptyJobIsWrittenToo() {
		assertTrue(exported(Jobs.create("job", "Nothing yet")).length > 0);
	}

	@Test
	void everyOperationIsWritten() {
		for (OperationKind kind : OperationKind.values()) {
			assertTrue(exported(SampleJobs.outline("M0 0H10V10H0Z", kind)).length > 0, kind.toString());
		}
	}

	@Test
	void failingStreamIsReportedAsItIs() {
		IOException full = new IOException("no space left");
		OutputStream broken = new OutputStream() {
			@Override
			public void write(int b) throws IOException {
				throw full;
			}
		};
		Exporter exporter = exporter();
		IOException thrown = assertThrows(IOException.class,
				() -> exporter.export(Handoff.of(SampleJobs.prepared(SampleJobs.giftTag())),
						OptionValues.defaults(exporter.options()), Monitor.NONE, broken));
		Throwable root = thrown;
		while (root.getCause() != null) {
			root = root.getCause();
		}
		assertSame(full, root);
	}

	@Test
	void theJobIsLeftAsItWas() throws IOException {
		Job job = SampleJobs.giftTag();
		byte[] before = JobFile.toBytes(job);
		exported(job);
		assertEquals(new String(before, StandardCharsets.UTF_8),
				new String(JobFile.toBytes(job), StandardCharsets.UTF_8));
	}
}
