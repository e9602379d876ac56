namespace Pattress;

/// <summary>
/// One thing wrong with an input: the one error type of command line, API and page.
/// </summary>
/// <param name="Code">Fixed reason code, e.g. <c>unknown_field</c>; its sentence is in the text layer.</param>
/// <param name="Path">JSON path of the field, e.g. <c>$.walls[0].width_mm</c>.</param>
/// <param name="Value">What was found, shortened to 80 characters.</param>
/// <param name="Allowed">What is allowed there, in plain words.</param>
public sealed record Problem(string Code, string Path, string Value, string Allowed);

/// <summary>An answer, or every problem that stood in its way. Exactly one of the two is there.</summary>
public sealed record Outcome<T>(T? Value, IReadOnlyList<Problem> Problems) where T : class
{
    /// <summary>True when there is an answer.</summary>
    public bool Ok => Problems.Count == 0;

    public static Outcome<T> Of(T value) => new(value, []);

    public static Outcome<T> Refused(params IReadOnlyList<Problem> problems) => new(null, problems);
}
