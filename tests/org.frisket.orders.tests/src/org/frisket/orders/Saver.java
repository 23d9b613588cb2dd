package org.frisket.orders;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;

import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;

/** A program of its own that saves a job again and again, and says so, until it is killed. */
final class Saver {

	private Saver() {
	}

	/** In turn so many that writing takes a while, and so few that it is mostly opening and closing. */
	static int words(long revision) {
		return revision % 2 == 0 ? 20_000 : 20;
	}

	/** @param arguments folder, address or "", number of the job */
	public static void main(String[] arguments) throws Exception {
		PrintStream out = System.out;
		OrderBook book = new OrderBook(new StudioFolder(Path.of(arguments[0])));
		Databases.choose(Optional.of(arguments[1]));
		long number = Long.parseLong(arguments[2]);
		StoredJob open = book.open(number);
		long revision = open.entry().revision();
		while (true) {
			open.job().setNotes((revision + 1) + " " + "wind ".repeat(words(revision + 1)));
			revision = book.save(open.job(), revision, "Saver").revision();
			out.println(revision);
			out.flush();
		}
	}
}
