package org.frisket.orders;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.testkit.OwnProcess;
import org.h2.jdbcx.JdbcDataSource;

/** Another program, as at another desk, that has the order book. */
final class OtherProgram {

	private OtherProgram() {
	}

	/** @param main a class of these tests. What it writes to the error stream is seen at once. */
	static ProcessBuilder of(Class<?> main, String... arguments) throws IOException {
		try {
			return OwnProcess.of(main, List.of(OrderBook.class, StudioFolder.class, Job.class, EList.class, EObject.class,
					XMLResource.class, NLS.class, RegistryFactory.class, CoreException.class, JdbcDataSource.class,
					Databases.class.getClassLoader().loadClass("org.postgresql.Driver")), arguments);
		} catch (ClassNotFoundException e) {
			throw new IOException(e);
		}
	}
}
