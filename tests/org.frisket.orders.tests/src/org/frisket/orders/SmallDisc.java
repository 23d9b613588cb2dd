package org.frisket.orders;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A disc of a certain size in a folder, where the system lets us have one. */
final class SmallDisc implements AutoCloseable {

	private final Path folder;

	SmallDisc(Path folder, String size) throws Exception {
		this.folder = Files.createDirectories(folder);
		assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder.toString()),
				"no disc can be mounted here: that takes root");
	}

	void resize(String size) throws Exception {
		set("size=" + size);
	}

	/** From now on it is only to be looked at. */
	void protect() throws Exception {
		set("ro");
	}

	private void set(String option) throws Exception {
		if (!run("mount", "-o", "remount," + option, folder.toString())) {
			throw new IOException(option);
		}
	}

	private static boolean run(String... command) throws Exception {
		try {
			return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD)
					.start().waitFor() == 0;
		} catch (IOException noSuchProgram) {
			return false;
		}
	}

	@Override
	public void close() throws Exception {
		run("umount", folder.toString());
	}
}
