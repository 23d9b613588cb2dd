package org.frisket.orders.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

import org.frisket.studio.store.Sql;

/** The files of jobs: packed, as text, in pieces that any database takes. */
public final class Documents {

	/** As the column has it. */
	private static final int PIECE = 1_000_000;
	/** A file that is larger unpacked was not made here. */
	private static final int LARGEST = 1 << 30;
	private static final int BUFFER = 1 << 16;
	/** In bytes: as much is tried at once, as many times. */
	private static final int SLICE = 1 << 13;
	private static final int SLICES = 6;

	private Documents() {
	}

	/** Puts a document in the place of whatever was kept of the job. */
	public static void put(Connection connection, String job, byte[] file) throws SQLException {
		Sql.update(connection, "DELETE FROM orders_document WHERE job = ?", job);
		addAll(connection, pieces(job, file));
	}

	/** @param pieces of jobs of which nothing is kept yet, as {@link #pieces} makes them */
	static void addAll(Connection connection, List<Object[]> pieces) throws SQLException {
		Sql.updateAll(connection, "INSERT INTO orders_document (job, part, content) VALUES (?, ?, ?)", pieces);
	}

	static List<Object[]> pieces(String job, byte[] file) {
		String text = Base64.getEncoder().encodeToString(packed(file));
		List<Object[]> pieces = new ArrayList<>();
		for (int from = 0; from < text.length(); from += PIECE) {
			pieces.add(new Object[] { job, pieces.size(), text.substring(from, Math.min(text.length(), from + PIECE)) });
		}
		return pieces;
	}

	/** @throws IOException if what is kept is damaged */
	public static Optional<byte[]> get(Connection connection, String job) throws SQLException, IOException {
		List<String> pieces = Sql.list(connection, "SELECT content FROM orders_document WHERE job = ? ORDER BY part",
				row -> row.getString(1), job);
		if (pieces.isEmpty()) {
			return Optional.empty();
		}
		try {
			return Optional.of(unpacked(Base64.getDecoder().decode(String.join("", pieces))));
		} catch (IllegalArgumentException noBase64) {
			throw new IOException(noBase64.getMessage(), noBase64);
		}
	}

	/**
	 * What repeats nothing, as the places of many corners and pictures do, is packed as small in half the time if nobody
	 * looks for what repeats. Some slices tell which it is.
	 */
	static byte[] packed(byte[] file) {
		int slices = file.length / (SLICES * SLICE) > 0 ? SLICES : 0;
		int plain = 0;
		int searched = 0;
		for (int i = 0; i < slices; i++) {
			int from = (int) ((long) file.length * i / slices);
			plain += packed(file, from, SLICE, Deflater.HUFFMAN_ONLY).length;
			searched += packed(file, from, SLICE, Deflater.DEFAULT_STRATEGY).length;
		}
		return packed(file, 0, file.length, plain < searched ? Deflater.HUFFMAN_ONLY : Deflater.DEFAULT_STRATEGY);
	}

	private static byte[] packed(byte[] file, int from, int length, int strategy) {
		ByteArrayOutputStream packed = new ByteArrayOutputStream();
		Deflater fast = new Deflater(Deflater.BEST_SPEED);
		fast.setStrategy(strategy);
		try (DeflaterOutputStream out = new DeflaterOutputStream(packed, fast, BUFFER)) {
			out.write(file, from, length);
		} catch (IOException e) {
			throw new IllegalStateException(e);
		} finally {
			fast.end();
		}
		return packed.toByteArray();
	}

	static byte[] unpacked(byte[] packed) throws IOException {
		try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
			byte[] file = in.readNBytes(LARGEST);
			if (in.read() >= 0) {
				throw new IOException("more than " + LARGEST + " bytes");
			}
			return file;
		}
	}
}
