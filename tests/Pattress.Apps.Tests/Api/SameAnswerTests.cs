using Pattress.Apps.Tests.Cli;

namespace Pattress.Apps.Tests.Api;

/// <summary>The same document gives the same answer, letter for letter, over HTTP and on the command line.</summary>
public class SameAnswerTests(ServerFixture server) : IClassFixture<ServerFixture>
{
    [Theory]
    [InlineData("plan", "demo-house.job.json")]
    [InlineData("plan", "masonry-house.job.json")]
    [InlineData("plan", "rented-flat.job.json")]
    [InlineData("buy", "demo-house.job.json")]
    [InlineData("certainty", "rented-flat.job.json")]
    [InlineData("proof", "demo-house.job.json")]
    [InlineData("wall", "demo-house.job.json")]
    [InlineData("wall", "landing.wall.json")]
    [InlineData("locate", "landing.scan.json")]
    public async Task A_sample_is_answered_alike(string question, string sample)
    {
        string file = Path.Combine(Samples.Root, "samples", sample);
        using var answer = await server.Client.PostAsync($"/api/{question}", ApiTests.Body(await File.ReadAllTextAsync(file)));
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal((await Ran.Pattress(question, file, "--json")).Out.Trim(), (await answer.Content.ReadAsStringAsync()).Trim());
    }

    [Theory]
    [InlineData("wall", "landing.wall.json")]
    [InlineData("locate", "landing.scan.json")]
    public async Task Explained_it_is_answered_alike(string question, string sample)
    {
        string file = Path.Combine(Samples.Root, "samples", sample);
        using var answer = await server.Client.PostAsync($"/api/{question}?explain=yes", ApiTests.Body(await File.ReadAllTextAsync(file)));
        Assert.Equal((await Ran.Pattress(question, file, "--json", "--explain")).Out.Trim(), (await answer.Content.ReadAsStringAsync()).Trim());
    }

    [Theory]
    [InlineData("wall")]
    [InlineData("locate")]
    public async Task A_schema_is_the_command_lines(string document) =>
        Assert.Equal((await Ran.Pattress("schema", document)).Out.Trim(), (await server.Client.GetStringAsync($"/api/schema?document={document}")).Trim());

    [Fact]
    public async Task The_demo_plan_is_the_plan_of_the_demo_house() =>
        Assert.Equal((await Ran.Pattress("plan", Samples.DemoHouse, "--json")).Out.Trim(), (await server.Client.GetStringAsync("/api/demo/plan")).Trim());

    [Theory]
    [InlineData("/api/plan", "{\"pattress_job\":1,\"nonsense\":2}", "unknown_field")]
    [InlineData("/api/plan", "{", "not_json")]
    [InlineData("/api/locate", "{", "not_json")]
    [InlineData("/api/wall", "{\"nonsense\":2}", "unknown_field")]
    [InlineData("/api/bracket", "{", "not_json")]
    [InlineData("/api/beam", "{", "not_json")]
    public async Task Bad_input_is_refused_with_every_problem(string address, string body, string code)
    {
        using var answer = await server.Client.PostAsync(address, ApiTests.Body(body));
        await ApiTests.IsProblem(answer, 400, code);
        Assert.DoesNotContain("   at ", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task A_body_beyond_the_bound_is_refused()
    {
        // The server refuses by the length that the head names and closes: who sends on without asking may find the pipe broken before the answer.
        using var request = new HttpRequestMessage(HttpMethod.Post, server.Client.BaseAddress + "api/plan") { Content = ApiTests.Body(new string(' ', 4_000_001)) };
        request.Headers.ExpectContinue = true;
        using var answer = await server.Client.SendAsync(request);
        await ApiTests.IsProblem(answer, 413, "too_large");
    }

    [Fact]
    public async Task Bytes_that_are_no_text_are_refused()
    {
        using var answer = await server.Client.PostAsync("/api/plan", new ByteArrayContent([0x7b, 0xff, 0xfe]));
        await ApiTests.IsProblem(answer, 400, "not_utf8");
    }
}
