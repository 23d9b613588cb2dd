package org.frisket.model;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Base64;

/** The bytes of a picture's file. They never change, so that copies of a job share them. */
public final class ImageBytes {

	private final byte[] bytes;
	private final int hash;

	private ImageBytes(byte[] bytes) {
		this.bytes = bytes;
		hash = Arrays.hashCode(bytes);
	}

	public static ImageBytes of(byte[] bytes) {
		return new ImageBytes(bytes.clone());
	}

	/**
	 * @param base64 as {@link #toString()} writes it; white space is passed over
	 * @throws IllegalArgumentException if the text is not base 64
	 */
	public static ImageBytes parse(String base64) {
		return new ImageBytes(Base64.getDecoder().decode(base64.replaceAll("\\s+", "")));
	}

	public int size() {
		return bytes.length;
	}

	/** Reads them from the first one on. */
	public InputStream open() {
		return new ByteArrayInputStream(bytes);
	}

	@Override
	public boolean equals(Object other) {
		return other == this || other instanceof ImageBytes image && hash == image.hash
				&& Arrays.equals(bytes, image.bytes);
	}

	@Override
	public int hashCode() {
		return hash;
	}

	/** In base 64, without line ends. */
	@Override
	public String toString() {
		return Base64.getEncoder().encodeToString(bytes);
	}
}
