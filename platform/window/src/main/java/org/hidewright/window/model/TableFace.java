package org.hidewright.window.model;

import java.util.List;

/**
 * An answer that is a table.
 *
 * @param key as declared
 * @param label what it is called
 * @param head labels of its columns
 * @param rows a text for each cell
 */
public record TableFace(String key, String label, List<String> head, List<List<String>> rows) {}
