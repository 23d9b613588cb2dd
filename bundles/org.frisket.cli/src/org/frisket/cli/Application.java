package org.frisket.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The command line as an application of the platform; its result is the process's exit status. */
public final class Application implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		context.applicationRunning();
		String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
		return Frisket.run(arguments, out, err);
	}

	@Override
	public void stop() {
		// a verb runs to its end; the process goes with the framework
	}
}
