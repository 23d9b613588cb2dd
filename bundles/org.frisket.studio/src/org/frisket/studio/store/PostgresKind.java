package org.frisket.studio.store;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.postgresql.ds.PGSimpleDataSource;

/** PostgreSQL servers. */
public final class PostgresKind implements DatabaseKind {

	static final String BEGINS = "jdbc:postgresql:";

	/** In seconds. */
	private static final int CONNECT_WITHIN = 10;

	@Override
	public Database at(String address, Supplier<Optional<String>> password) throws IOException {
		PGSimpleDataSource source = new PGSimpleDataSource();
		try {
			source.setUrl(address);
		} catch (IllegalArgumentException e) {
			throw new IOException(NLS.bind(Messages.Databases_unknown, Databases.withoutSecrets(address)), e);
		}
		if (source.getApplicationName() == null) {
			source.setApplicationName("Frisket");
		}
		source.setConnectTimeout(CONNECT_WITHIN);
		source.setTcpKeepAlive(true);
		String own = source.getPassword();
		// asked for anew each time, since the one before may have been wrong
		return new ServerDatabase(Databases.withoutSecrets(address),
				() -> source.getConnection(source.getUser(), own != null ? own : password.get().orElse(null)));
	}
}
