using System.Text.Json;
using Pattress.Jobs;

namespace Pattress.Tests.Jobs;

public class ProblemJsonTests
{
    private static readonly Problem[] Two = [new("negative", "$.a", "-1", "a length"), new("missing_field", "$.b", "", "an id")];

    [Fact]
    public void The_command_line_gets_every_problem_with_its_sentence()
    {
        var problems = JsonDocument.Parse(ProblemJson.Write(Two)).RootElement.GetProperty("problems");
        Assert.Equal(["code", "path", "value", "allowed", "why"], problems[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal("$.a: -1 is negative. Allowed: a length.", problems[0].GetProperty("why").GetString());
        Assert.Equal("$.b is missing. Allowed: an id.", problems[1].GetProperty("why").GetString());
    }

    /// <summary>Members of RFC 9457 section 3.1.</summary>
    [Fact]
    public void The_api_gets_problem_details()
    {
        var details = JsonDocument.Parse(ProblemJson.Details(Two)).RootElement;
        Assert.Equal(("about:blank", 400), (details.GetProperty("type").GetString(), details.GetProperty("status").GetInt32()));
        Assert.Equal("2 problems in the input.", details.GetProperty("detail").GetString());
        Assert.Equal(2, details.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void People_get_a_line_each() =>
        Assert.Equal("$.a: -1 is negative. Allowed: a length.\n$.b is missing. Allowed: an id.\n", ProblemJson.Lines(Two));
}
