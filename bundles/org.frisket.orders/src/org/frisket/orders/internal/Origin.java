package org.frisket.orders.internal;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Stage;
import org.frisket.model.UnwritableJobException;
import org.frisket.orders.Entry;
import org.frisket.studio.store.Sql;

/**
 * What a job that comes as a file says of where it comes from. An id that was drawn by lot belongs to one job only. Any
 * other is a mere name that two jobs may have come by: one of these is in the order book if the job there that is called so
 * bears the same number, or if one has come that was the same in all but id, number, stage and history.
 *
 * @param id     empty if it says nothing
 * @param number as it stands in the file; empty for none
 * @param digest of its content; empty if its id tells enough
 */
public record Origin(String id, String number, Optional<String> digest) {

	/** As {@link UUID} writes it. */
	private static final Pattern DRAWN = Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");

	/** What jobs are called that were made without anybody asking for an id. */
	private static final String NOBODY = "job";

	/** To be asked before the job is given anything. */
	public static Origin of(Job job) throws UnwritableJobException {
		String id = job.getId() == null || NOBODY.equals(job.getId()) ? "" : job.getId().strip();
		return new Origin(id, job.getNumber() == null ? "" : job.getNumber().strip(),
				isDrawn(id) ? Optional.empty() : Optional.of(digest(job)));
	}

	private static boolean isDrawn(String id) {
		return DRAWN.matcher(id).matches();
	}

	private static String digest(Job job) throws UnwritableJobException {
		Job copy = EcoreUtil.copy(job);
		copy.setId(NOBODY);
		copy.setNumber(null);
		copy.setStage(Stage.ENQUIRY);
		copy.getHistory().clear();
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(JobFile.toBytes(copy)));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e);
		}
	}

	/** The job of the order book that this one is. */
	Optional<Entry> known(Connection connection) throws SQLException {
		// what was kept before ids were drawn may still be called so
		Optional<Entry> named = JobRows.find(connection, id.isEmpty() ? NOBODY : id);
		if (named.isPresent() && (isDrawn(id) || number.equals(Long.toString(named.get().number())))) {
			return named;
		}
		if (digest.isEmpty()) {
			return Optional.empty();
		}
		Optional<String> came = Sql.first(connection, "SELECT job FROM orders_arrival WHERE digest = ? ORDER BY job",
				row -> row.getString(1), digest.get());
		return came.isPresent() ? JobRows.find(connection, came.get()) : Optional.empty();
	}

	/** The id it gets: its own, if that says something and is free. */
	String freeId(Connection connection) throws SQLException {
		return id.isEmpty() || JobRows.find(connection, id).isPresent() ? UUID.randomUUID().toString() : id;
	}

	/** Remembers what it looked like. */
	void keep(Connection connection, String job) throws SQLException {
		if (digest.isPresent()) {
			Sql.update(connection, "INSERT INTO orders_arrival (job, digest) VALUES (?, ?)", job, digest.get());
		}
	}
}
