using Pattress.Actions;

namespace Pattress.Jobs.Text;

/// <summary>The words of a document for our enums.</summary>
public static class Words
{
    /// <summary><c>ready</c>, <c>check_first</c> or <c>not_here</c>.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Ready => "ready",
        Verdict.CheckFirst => "check_first",
        _ => "not_here",
    };

    /// <summary><c>nuisance</c>, <c>hurts</c>, <c>overhead</c> or <c>holds_person</c>.</summary>
    public static string Of(ConsequenceClass consequence) => consequence switch
    {
        ConsequenceClass.Nuisance => "nuisance",
        ConsequenceClass.Hurts => "hurts",
        ConsequenceClass.Overhead => "overhead",
        _ => "holds_person",
    };
}
