namespace Pattress.Server;

/// <summary>How a question ended. The command line's exit code and the API's status follow from it.</summary>
public enum Ending { Answered, BadInput, NotCovered }

/// <summary>What a question was answered with: a document, or the problems that stood in its way.</summary>
/// <param name="Json">The document; of a rule that is not covered, the document that says so; empty for bad input.</param>
public sealed record Reply(Ending Ending, string Json, IReadOnlyList<Problem> Problems)
{
    public static Reply Of(string json) => new(Ending.Answered, json, []);

    public static Reply Refused(IReadOnlyList<Problem> problems) => new(Ending.BadInput, "", problems);

    public static Reply NotCovered(string json) => new(Ending.NotCovered, json, []);

    /// <summary>The answer written as a document, or the problems.</summary>
    public static Reply Of<T>(Outcome<T> outcome, Func<T, string> write) where T : class =>
        outcome.Value is { } value ? Of(write(value)) : Refused(outcome.Problems);
}
