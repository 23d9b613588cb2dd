package org.frisket.cli.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.cli.line.Refusal;
import org.frisket.model.WholeFile;

/** The folder that {@code --out} names for several files. */
public final class OutputFolder {

	private OutputFolder() {
	}

	/** Makes it if it is not there. That the folder it is to lie in is missing is rather a slip of the finger. */
	public static void make(Path folder) throws Refusal {
		Path above = folder.toAbsolutePath().normalize().getParent();
		if (above != null && !Files.exists(above)) {
			throw new Refusal("--out: “" + folder + "” cannot be made: there is no folder " + above);
		}
		makeAll(folder);
	}

	/** Makes it, and those it lies in, if they are not there. */
	public static void makeAll(Path folder) throws Refusal {
		Path there = folder.toAbsolutePath().normalize();
		while (!Files.exists(there)) {
			there = there.getParent();
		}
		if (!Files.isDirectory(there)) {
			throw new Refusal("--out: “" + folder + "” cannot be made: " + there + " is a file");
		}
		try {
			Files.createDirectories(folder);
		} catch (IOException e) {
			throw new Refusal("--out: “" + folder + "” cannot be made: " + WholeFile.reason(e));
		}
	}

	/** Before several files are written, of which each is kept even if others fail. */
	public static void requirePlace(Path file) throws Refusal {
		Path folder = file.toAbsolutePath().getParent();
		if (Files.isDirectory(file)) {
			throw new Refusal("cannot write " + file + ": this is a folder");
		}
		if (!Files.isDirectory(folder)) {
			throw new Refusal("cannot write " + file + ": there is no folder " + folder);
		}
		if (Files.exists(file) && !Files.isWritable(file)) {
			throw new Refusal("cannot write " + file + ": it is write-protected");
		}
	}
}
