package org.hidewright.launcher;

import java.io.IOException;
import java.nio.file.Path;
import org.osgi.framework.BundleContext;

/** The program as built, running in this process, with settings and caches of its own. */
public final class ProgramInProcess implements AutoCloseable {
    private final Host host;

    private ProgramInProcess(Host host) {
        this.host = host;
    }

    /** Starts it; what belongs to a user lies in the scratch folder. */
    public static ProgramInProcess start(Path scratch) throws Exception {
        ProgramHome home =
                new ProgramHome(Path.of("target", "hidewright").toFile().getAbsoluteFile());
        LineUp lineUp = LineUp.of(
                home,
                new String[] {SettingsFolder.OPTION, scratch.resolve("settings").toString()});
        return new ProgramInProcess(Host.start(lineUp, scratch.resolve("caches").toFile(), new Timings()));
    }

    public BundleContext context() {
        return host.context();
    }

    public <S> S service(Class<S> type) {
        return context().getService(context().getServiceReference(type));
    }

    @Override
    public void close() throws IOException {
        host.close();
    }
}
