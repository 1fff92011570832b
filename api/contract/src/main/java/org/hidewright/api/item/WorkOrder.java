package org.hidewright.api.item;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts operations in an order that works: each after all it has to come after, and else as they were given. */
public final class WorkOrder {
    private WorkOrder() {}

    /** Such an order; empty where some wait for each other in a circle. Ids that none of them has are passed over. */
    public static Optional<List<Operation>> of(List<Operation> operations) {
        List<Operation> left = new ArrayList<>(operations);
        List<Operation> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Set<String> undone = new HashSet<>();
            left.forEach(operation -> undone.add(operation.id()));
            Optional<Operation> next = left.stream()
                    .filter(operation -> operation.after().stream().noneMatch(undone::contains))
                    .findFirst();
            if (next.isEmpty()) {
                return Optional.empty();
            }
            order.add(next.get());
            left.remove(next.get());
        }
        return Optional.of(List.copyOf(order));
    }
}
