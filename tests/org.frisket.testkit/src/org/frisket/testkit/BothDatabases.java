package org.frisket.testkit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A studio whose order book is in its folder, or in a database of a server that all tests of a class share. */
public abstract class BothDatabases {

	private static String address;

	@TempDir
	protected Path home;

	@BeforeAll
	static void start() throws IOException {
		address = PostgresServer.shared().addressOfNew();
	}

	@AfterEach
	void folderAgain() {
		Databases.choose(Optional.empty());
	}

	/** @param shared whether its order book is on the server */
	protected StudioFolder studio(boolean shared) {
		Databases.choose(shared ? Optional.of(address) : Optional.empty());
		return new StudioFolder(home.resolve("studio"));
	}

	/** The same, with nothing in it. @param shared whether its order book is on the server */
	protected StudioFolder emptyStudio(boolean shared) throws IOException {
		StudioFolder studio = studio(shared);
		if (shared) {
			Databases.choose(Optional.of(PostgresServer.shared().addressOfNew()));
		}
		return studio;
	}
}
