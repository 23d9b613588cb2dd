package org.frisket.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Debian's PostgreSQL, started for a test on a free port of this machine alone, with nothing in it. */
public final class PostgresServer implements AutoCloseable {

	private static final Path PROGRAMS = Path.of("/usr/lib/postgresql");
	private static final int PATIENCE_S = 60;
	private static final String USER = "frisket";
	/** For all databases that the tests of a process have made. */
	private static final int CONNECTIONS = 400;

	private static PostgresServer shared;

	private final Path folder;
	private final Path programs;
	private final int port;
	private int others;

	private PostgresServer(Path folder, Path programs, int port) {
		this.folder = folder;
		this.programs = programs;
		this.port = port;
	}

	/** Whether there is one to start here. */
	public static boolean isInstalled() {
		return programs().isPresent();
	}

	private static Optional<Path> programs() {
		if (!Files.isDirectory(PROGRAMS)) {
			return Optional.empty();
		}
		try (Stream<Path> versions = Files.list(PROGRAMS)) {
			return versions.map(version -> version.resolve("bin")).filter(bin -> Files.isExecutable(bin.resolve("initdb")))
					.max(Comparator.naturalOrder());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** One that all tests of this process share, each with databases of its own; it ends with the process. */
	public static synchronized PostgresServer shared() throws IOException {
		if (shared == null) {
			PostgresServer started = start();
			Runtime.getRuntime().addShutdownHook(new Thread(() -> {
				try {
					started.close();
				} catch (IOException e) {
					e.printStackTrace();
				}
			}));
			shared = started;
		}
		return shared;
	}

	/** One that asks nobody for a password. */
	public static PostgresServer start() throws IOException {
		return start("");
	}

	/** @param password that everybody is asked for; empty for none */
	public static PostgresServer start(String password) throws IOException {
		Path folder = Files.createTempDirectory(Path.of("/tmp"), "frisket-postgres");
		int port;
		try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			port = free.getLocalPort();
		}
		PostgresServer server = new PostgresServer(folder, programs().orElseThrow(), port);
		if (isRoot()) {
			// the server refuses to be run by root
			run(List.of("chown", "postgres", folder.toString()));
		}
		Path asked = folder.resolve("password");
		// initdb refuses an empty one
		Files.writeString(asked, password.isEmpty() ? "none" : password);
		if (isRoot()) {
			run(List.of("chown", "postgres", asked.toString()));
		}
		server.call("initdb", "-D", server.data(), "-U", USER, "-A", password.isEmpty() ? "trust" : "scram-sha-256",
				"--pwfile=" + asked, "-E", "UTF8", "--no-locale", "-N");
		server.begin();
		return server;
	}

	private String data() {
		return folder.resolve("data").toString();
	}

	/** After it was stopped. */
	public void begin() throws IOException {
		call("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "-o",
				"-c listen_addresses=127.0.0.1 -c fsync=off -c unix_socket_directories='' -c max_connections=" + CONNECTIONS
						+ " -p " + port, "start");
	}

	/** Stops it at once, whoever is connected, and starts it again. */
	public void restart() throws IOException {
		stop();
		begin();
	}

	public void stop() throws IOException {
		call("pg_ctl", "-D", data(), "-w", "-m", "fast", "stop");
	}

	public String address() {
		return "jdbc:postgresql://127.0.0.1:" + port + "/postgres?user=" + USER;
	}

	public int port() {
		return port;
	}

	/** Of another database on it, with nothing in it. */
	public String addressOfNew() throws IOException {
		String name = "other" + ++others;
		call("createdb", "-h", "127.0.0.1", "-p", Integer.toString(port), "-U", USER, name);
		return "jdbc:postgresql://127.0.0.1:" + port + "/" + name + "?user=" + USER;
	}

	private void call(String program, String... arguments) throws IOException {
		List<String> command = new ArrayList<>();
		if (isRoot()) {
			command.addAll(List.of("runuser", "-u", "postgres", "--"));
		}
		command.add(programs.resolve(program).toString());
		command.addAll(List.of(arguments));
		run(command);
	}

	private static boolean isRoot() {
		return "root".equals(System.getProperty("user.name"));
	}

	private static void run(List<String> command) throws IOException {
		Path log = Files.createTempFile("frisket-postgres", ".log");
		try {
			// to a file: the server it leaves behind would hold a pipe open
			Process process = new ProcessBuilder(command).directory(new java.io.File("/tmp")).redirectErrorStream(true)
					.redirectOutput(log.toFile()).start();
			if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS) || process.exitValue() != 0) {
				process.destroyForcibly();
				throw new IOException(String.join(" ", command) + ": " + Files.readString(log));
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			throw new IOException(e);
		} finally {
			Files.delete(log);
		}
	}

	@Override
	public void close() throws IOException {
		try {
			stop();
		} finally {
			try (Stream<Path> files = Files.walk(folder)) {
				for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(file);
				}
			}
		}
	}
}
