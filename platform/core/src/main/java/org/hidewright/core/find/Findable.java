package org.hidewright.core.find;

/**
 * Something that can be found by its words.
 *
 * @param group what it is
 * @param title what it is called
 * @param where the slip or the calculator it stands in; empty where it stands by itself
 * @param help what it is for, or what is told of it
 * @param goal where it leads
 */
public record Findable(Group group, String title, String where, String help, Goal goal) {}
