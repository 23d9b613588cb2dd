package org.frisket.print.picture;

import java.io.IOException;

import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageInputStreamImpl;

import org.frisket.geometry.Monitor;

/** Ends a reader that takes the end of a file for zeros without end, and one that does not ask whether it was called off. */
final class WatchedStream extends ImageInputStreamImpl {

	/** Some readers look a little ahead. */
	private static final int MOST_MISSED = 64;

	private final ImageInputStream in;
	private final Monitor monitor;
	private int missed;

	/** @param in closed by who opened it */
	WatchedStream(ImageInputStream in, Monitor monitor) {
		this.in = in;
		this.monitor = monitor;
	}

	@Override
	public int read() throws IOException {
		at();
		int value = in.read();
		count(value < 0 ? -1 : 1);
		return value;
	}

	@Override
	public int read(byte[] bytes, int from, int length) throws IOException {
		at();
		int read = in.read(bytes, from, length);
		count(read);
		return read;
	}

	private void at() throws IOException {
		monitor.check();
		bitOffset = 0;
		if (in.getStreamPosition() != streamPos) {
			in.seek(streamPos);
		}
	}

	private void count(int read) throws IOException {
		if (read >= 0) {
			streamPos += read;
		} else if (++missed > MOST_MISSED) {
			// no EOFException: those are passed over
			throw new IOException(Messages.WatchedStream_end);
		}
	}

	@Override
	public long length() {
		try {
			return in.length();
		} catch (IOException e) {
			return -1;
		}
	}
}
