package org.hidewright.catalogue;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** Gets services of bundles and what they declare. Both run code of the bundle, and so under guard. */
final class Services {
    private final BundleContext context;
    private final Guard guard;

    Services(BundleContext context, Guard guard) {
        this.context = context;
        this.guard = guard;
    }

    /**
     * What a service declares; empty where it is none or declares nonsense, which is told.
     *
     * @param declare reads it off the service
     * @param invalid the notice for a wrong declaration, of the bundle's name and what is wrong
     */
    <S, T> Optional<T> declared(
            ServiceReference<?> reference,
            Class<S> type,
            Function<S, T> declare,
            BiFunction<String, String, Notice> invalid,
            Consumer<Remark> told) {
        String bundle = bundle(reference);
        try {
            Object service = guard.call(bundle, () -> look(reference, type, declare));
            if (service instanceof InvalidDeclaration wrong) {
                told.accept(remark(invalid.apply(bundle, wrong.getMessage())));
            } else if (service == null) {
                told.accept(remark(CatalogueNotices.NO_SERVICE.with(bundle)));
            } else {
                @SuppressWarnings("unchecked") // declare gave it
                T declared = (T) service;
                return Optional.of(declared);
            }
        } catch (BundleFault e) {
            told.accept(remark(CatalogueNotices.DID_NOT_START.with(bundle, e.words())));
        }
        return Optional.empty();
    }

    /** What is declared, or null where there is no such service, or why the declaration is none. */
    private <S, T> Object look(ServiceReference<?> reference, Class<S> type, Function<S, T> declare) {
        Object service = context.getService(reference);
        try {
            return type.isInstance(service) ? declare.apply(type.cast(service)) : null;
        } catch (InvalidDeclaration wrong) {
            return wrong;
        }
    }

    static Remark remark(Notice notice) {
        return Remark.of(notice, CoreTexts.TEXTS);
    }

    /** Symbolic name of the bundle a service is from; empty where it has just gone. */
    static String bundle(ServiceReference<?> reference) {
        Bundle bundle = reference.getBundle();
        return bundle == null ? "" : bundle.getSymbolicName();
    }

    /** By the {@link Precedence} of the bundles they are from. A service that goes meanwhile has no bundle, and is left out. */
    <R extends ServiceReference<?>> List<R> inOrder(Collection<R> references) {
        return references.stream()
                .map(reference -> new From<>(reference, reference.getBundle()))
                .filter(from -> from.bundle() != null)
                .sorted(Comparator.comparing(From::bundle, Precedence.of(context)))
                .map(From::reference)
                .toList();
    }

    private record From<R>(R reference, Bundle bundle) {}
}
