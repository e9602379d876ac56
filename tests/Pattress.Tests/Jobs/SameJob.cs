using System.Collections;

namespace Pattress.Tests.Jobs;

/// <summary>Compares two values field by field, so that a field which writer and reader both forget is noticed.</summary>
internal static class SameJob
{
    /// <summary>The path of the first difference, or null when there is none.</summary>
    public static string? Difference(object? a, object? b, string path = "job")
    {
        if (a is null || b is null) return ReferenceEquals(a, b) ? null : path;
        if (a is string or ValueType) return a.Equals(b) ? null : $"{path}: {a} and {b}";
        if (a is IDictionary map) return OfMaps(map, (IDictionary)b, path);
        if (a is IEnumerable list) return OfLists([.. list.Cast<object>()], [.. ((IEnumerable)b).Cast<object>()], path);
        return a.GetType().GetProperties().Where(p => p.GetMethod!.GetParameters().Length == 0 && p.Name != "EqualityContract")
            .Select(p => Difference(p.GetValue(a), p.GetValue(b), $"{path}.{p.Name}")).FirstOrDefault(d => d is not null);
    }

    private static string? OfMaps(IDictionary a, IDictionary b, string path) =>
        a.Count != b.Count ? path : a.Keys.Cast<object>().Select(k => Difference(a[k], b[k], $"{path}.{k}")).FirstOrDefault(d => d is not null);

    private static string? OfLists(List<object> a, List<object> b, string path) =>
        a.Count != b.Count ? path : a.Select((x, i) => Difference(x, b[i], $"{path}[{i}]")).FirstOrDefault(d => d is not null);
}
