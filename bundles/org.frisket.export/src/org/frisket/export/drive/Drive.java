package org.frisket.export.drive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collection;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;

/**
 * A drive that can be pulled.
 *
 * @param name     for people: that of the folder it is mounted at
 * @param folder   it is mounted at
 * @param writable whether files can be put on it
 */
public record Drive(String name, Path folder, boolean writable) {

	/** Whether a file lies on it, or would. */
	public boolean holds(Path file) {
		return file.toAbsolutePath().normalize().startsWith(folder);
	}

	/**
	 * Sees to it that files written before are on the drive and not on their way to it: after this it may be pulled.
	 *
	 * @throws IOException with a message for people, if that is not certain
	 */
	public void settle(Collection<Path> files) throws IOException {
		for (Path file : files) {
			try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
				channel.force(true);
			} catch (IOException e) {
				throw new IOException(NLS.bind(Messages.Drive_notSettled, new Object[] { file, name, WholeFile.reason(e) }), e);
			}
		}
	}
}
