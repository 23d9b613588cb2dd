package org.frisket.model;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.model.internal.JobReader;
import org.frisket.model.internal.JobWriter;

/**
 * Job files ({@code .frjob}): UTF-8 XML of the namespace {@code urn:frisket:job:1}, one element a line, in an order and
 * with numbers that depend on the job alone. A file that was read and not changed is written as the same bytes.
 *
 * <p>What a later Frisket added within the same version of the format is kept with the job and written again; it stands
 * behind what this one knows. Files of earlier versions are brought up to date while they are read.
 */
public final class JobFile {

	/** Ending of the files' names, with its dot. */
	public static final String ENDING = ".frjob";

	/** Bytes that a file has at most; larger ones are refused. */
	public static final int LARGEST = JobReader.LARGEST;

	private JobFile() {
	}

	/** Reads a job from a file. */
	public static Job load(Path file) throws UnreadableJobException {
		try (InputStream in = Files.newInputStream(file)) {
			Job job = JobReader.read(in, file.toString());
			JobHome.set(job, file);
			return job;
		} catch (UnreadableJobException e) {
			throw e;
		} catch (IOException e) {
			throw new UnreadableJobException(file.toString(), 0, 0, WholeFile.reason(e), e);
		}
	}

	/**
	 * Reads a job from a stream, which is left open.
	 *
	 * @param name what messages call it
	 */
	public static Job load(InputStream in, String name) throws UnreadableJobException {
		return JobReader.read(in, name);
	}

	/** Reads a job from the bytes of a file. */
	public static Job load(byte[] content, String name) throws UnreadableJobException {
		return JobReader.read(new ByteArrayInputStream(content), name);
	}

	/**
	 * Writes a job to a file. The old file stays as it is until the new one is complete on the disk and takes its place
	 * in one step; if anything fails, nothing is left behind.
	 */
	public static void save(Job job, Path file) throws UnwritableJobException {
		byte[] content;
		try {
			content = JobWriter.bytes(job);
		} catch (IOException e) {
			throw new UnwritableJobException(file.toString(), e.getMessage(), e);
		}
		try {
			WholeFile.write(out -> out.write(content), file);
		} catch (IOException e) {
			throw new UnwritableJobException(file.toString(), WholeFile.reason(e), e);
		}
	}

	/** The bytes of a job's file. */
	public static byte[] toBytes(Job job) throws UnwritableJobException {
		try {
			return JobWriter.bytes(job);
		} catch (IOException e) {
			throw new UnwritableJobException(null, e.getMessage(), e);
		}
	}
}
