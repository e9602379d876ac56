namespace Pattress.Jobs.Merging;

/// <summary>
/// The union of two lists of records by id, in the order of their ids (UUID v7: the order of time). Withdrawn on either side
/// is withdrawn. Commutative, associative and idempotent, so it does not matter which device meets which, or how often.
/// </summary>
internal static class Union
{
    /// <param name="id">Id of a record.</param>
    /// <param name="join">Joins two records of one id.</param>
    public static IReadOnlyList<T> Of<T>(IReadOnlyList<T> ours, IReadOnlyList<T> theirs, Func<T, string> id, Func<T, T, T> join) =>
        [.. ours.Concat(theirs).GroupBy(id, StringComparer.Ordinal).Select(g => g.Aggregate(join)).OrderBy(id, StringComparer.Ordinal)];

    /// <summary>One of two records with the same id. They should be the same; where they are not, the greater text is taken, on whichever device.</summary>
    public static T Greater<T>(T a, T b, Func<T, string> text) => string.CompareOrdinal(text(a), text(b)) >= 0 ? a : b;
}
